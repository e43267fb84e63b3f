// tenter-cli: the command line of the computation in core. Needs no display.
#include <exception>
#include <string>

#include "outcome.h"
#include "program.h"

int main(int argc, char** argv) {
    using namespace tenter::command;
    try {
        return run(argc, argv);
    } catch (const std::exception& error) {
        return refuse("tenter-cli", std::string("The program stopped: ") + error.what() + ".",
                      "Free some memory, or use a smaller project.");
    }
}
