# Writes OUTPUT, a C++ file with the commit of the folder SOURCE, if it has changed.
set(commit "")
if(GIT)
  execute_process(COMMAND ${GIT} -C ${SOURCE} describe --always --dirty=-modified --abbrev=12 --exclude=*
                  OUTPUT_VARIABLE commit OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
endif()
if(NOT commit)
  set(commit unknown)
endif()
file(CONFIGURE OUTPUT ${OUTPUT} @ONLY CONTENT [[
#include "about/about.h"

namespace tenter::about {

std::string_view commit() {
    return "@commit@";
}

}  // namespace tenter::about
]])
