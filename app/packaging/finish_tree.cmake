# Run by CPack on the installed tree before it is packed: what Debian Policy asks of documentation, and one time for all
# files, so that the same commit gives the same bytes.
if(DEFINED ENV{SOURCE_DATE_EPOCH})
  set(epoch $ENV{SOURCE_DATE_EPOCH})
else()
  string(TIMESTAMP epoch "%s" UTC)
endif()

function(run)
  execute_process(COMMAND ${ARGN} COMMAND_ERROR_IS_FATAL ANY OUTPUT_VARIABLE output OUTPUT_STRIP_TRAILING_WHITESPACE)
  set(output "${output}" PARENT_SCOPE)
endfunction()

set(tree ${CPACK_TEMPORARY_DIRECTORY})
if(CPACK_GENERATOR STREQUAL DEB)
  run(find ${tree} -path "*/man/man1/*.1" -exec gzip -9n "{}" +)
  # Debian Policy § 12.5 and § 12.7: each package has its own.
  run(env LC_ALL=C date -u -R -d @${epoch})
  set(date ${output})
  file(GLOB folders ${tree}/*/usr/share/doc/* ${tree}/usr/share/doc/*)
  foreach(folder ${folders})
    get_filename_component(package ${folder} NAME)
    file(REMOVE ${folder}/GPL-3)
    file(RENAME ${folder}/CHANGELOG.md ${folder}/changelog)
    file(WRITE ${folder}/changelog.Debian
         "tenter (${CPACK_PACKAGE_VERSION}-${CPACK_DEBIAN_PACKAGE_RELEASE}) unstable; urgency=medium\n\n"
         "  * New version. The changes are in changelog.gz.\n\n"
         " -- ${CPACK_PACKAGE_CONTACT}  ${date}\n")
    run(gzip -9n ${folder}/changelog ${folder}/changelog.Debian)
    cmake_path(SET share NORMALIZE ${folder}/../..)
    file(READ ${CPACK_TENTER_OVERRIDES}/lintian-overrides overrides)
    string(REPLACE "PACKAGE" ${package} overrides "${overrides}")
    file(WRITE ${share}/lintian/overrides/${package} "${overrides}")
  endforeach()
endif()
run(find ${tree} -exec touch --no-dereference --date=@${epoch} "{}" +)
run(find ${tree} -type f ! -perm /111 -exec chmod 644 "{}" +)
