module roomwright

go 1.26.0

require (
	go.yaml.in/yaml/v4 v4.0.0 // indirect
	golang.org/x/image v0.47.0 // indirect
	golang.org/x/text v0.43.0 // indirect
	pgregory.net/rapid v1.3.0 // indirect
)
