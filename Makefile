# aligner: the two commands a newcomer needs are "make run" and "make test".
# Both first install what a bare Debian or Ubuntu lacks and say what and why;
# elsewhere they name the packages.

SHELL := /bin/bash
export LANG ?= C.UTF-8
BIN := bin/aligner

.PHONY: run test build bench rounds clean

run: ## set up what is missing and open the program
	@.ci/setup run
	@$(MAKE) --no-print-directory build
	@.ci/open $(BIN)

test: ## set up what is missing, then format, vet and every test
	@.ci/setup test
	@test -z "$$(gofmt -l .)" || { echo "gofmt would change:"; gofmt -l .; exit 1; }
	go vet ./...
	.ci/screen go test -timeout 60m ./...

build:
	@go build -o $(BIN) ./cmd/aligner

bench: ## how fast it is; DEVELOPERS.md says what to look for
	go test -run '^$$' -bench . -benchmem ./...

rounds: ## line up 1,000 simulated boats by the tool and by the lever rule
	go run ./kinematics/rounds/print -seed 1 -boats 1000

clean:
	rm -rf bin
