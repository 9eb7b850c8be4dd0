module example.org/lakelarder/examples/internal/calendar/icstest

go 1.21

require (
	example.org/lakelarder v0.0.0
	github.com/arran4/golang-ical v0.3.4
	github.com/stretchr/testify v1.12.1
)

require go.yaml.in/yaml/v3 v3.0.5 // indirect

replace example.org/lakelarder => ../../../..
