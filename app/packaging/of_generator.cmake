# Read by CPack once for each generator.
if(CPACK_GENERATOR STREQUAL TGZ)
  # The archive is for any prefix, so it does not start with one.
  set(CPACK_PACKAGING_INSTALL_PREFIX /)
elseif(CPACK_GENERATOR STREQUAL DEB)
  # Each package has a summary of its own, in the first line of its description.
  set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "")
endif()
