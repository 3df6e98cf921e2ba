module roomwright

go 1.26
