# Makes C++ from a catalogue of Qt Linguist: cmake -DTS=core_de.ts -DCPP=german.cpp -DNAME=german -P catalogue.cmake
# It reads files as lupdate writes them, with one element a line. A translation that is not finished is left out.
file(READ "${TS}" text)
# Characters that mean something in lists of CMake.
string(REPLACE ";" "<semicolon>" text "${text}")
string(REPLACE "[" "<open>" text "${text}")
string(REPLACE "]" "<close>" text "${text}")
string(REPLACE "\n" ";" lines "${text}")
set(entries "")
foreach(line IN LISTS lines)
  if(line MATCHES "<source>(.*)</source>")
    set(source "${CMAKE_MATCH_1}")
    set(forms "")
  elseif(line MATCHES "<(translation|numerusform)>(.*)</")
    string(APPEND forms ", R\"~(${CMAKE_MATCH_2})~\"")
  elseif(line MATCHES "type=\"(unfinished|vanished|obsolete)\"")
    set(source "")
  elseif(line MATCHES "</message>" AND source AND forms)
    string(APPEND entries "    {R\"~(${source})~\"${forms}},\n")
  endif()
endforeach()
string(ASCII 194 160 no_break_space)
string(ASCII 194 173 soft_hyphen)
foreach(entity "&quot<semicolon>/\"" "&apos<semicolon>/'" "&lt<semicolon>/<" "&gt<semicolon>/>"
        "&#xa0<semicolon>/${no_break_space}" "&#xad<semicolon>/${soft_hyphen}" "&amp<semicolon>/&" "<open>/[" "<close>/]")
  string(FIND "${entity}" "/" at)
  string(SUBSTRING "${entity}" 0 ${at} name)
  math(EXPR at "${at} + 1")
  string(SUBSTRING "${entity}" ${at} -1 character)
  string(REPLACE "${name}" "${character}" entries "${entries}")
endforeach()
string(REPLACE "<semicolon>" ";" entries "${entries}")
file(WRITE "${CPP}" "#include \"wording/catalogue.h\"

namespace tenter::wording {

namespace {

constexpr Entry entries[] = {
${entries}};

}  // namespace

std::span<const Entry> ${NAME}Catalogue() {
    return entries;
}

}  // namespace tenter::wording
")
