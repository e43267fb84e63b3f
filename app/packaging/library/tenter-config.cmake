# find_package(tenter 0.1 REQUIRED) gives the target tenter::core.
include(CMakeFindDependencyMacro)
find_dependency(PkgConfig)
find_dependency(nlohmann_json 3.11)
find_dependency(ZLIB)
foreach(each "HARFBUZZ harfbuzz" "ICU icu-uc icu-i18n" "FONTCONFIG fontconfig" "WOFF2 libwoff2dec" "GUMBO gumbo"
             "CMARK libcmark" "CAIRO cairo" "FREETYPE freetype2")
  string(REPLACE " " ";" each "${each}")
  list(POP_FRONT each name)
  pkg_check_modules(${name} REQUIRED QUIET IMPORTED_TARGET ${each})
endforeach()
include(${CMAKE_CURRENT_LIST_DIR}/tenter-targets.cmake)
