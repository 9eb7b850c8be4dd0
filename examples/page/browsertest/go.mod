module example.org/lakelarder/examples/page/browsertest

go 1.25

require (
	example.org/lakelarder v0.0.0
	github.com/chromedp/cdproto v0.159.0
	github.com/chromedp/chromedp v0.23.0
	github.com/stretchr/testify v1.12.1
)

require (
	github.com/go-json-experiment/json v0.0.0-20260213210345-44df1a37e875 // indirect
	github.com/shopspring/decimal v1.6.0 // indirect
	go.yaml.in/yaml/v3 v3.0.5 // indirect
)

replace example.org/lakelarder => ../../..
