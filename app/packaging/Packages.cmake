# Packages by CPack: tenter (the window), tenter-cli, libtenter-dev as .deb, and all together as .tar.gz.
# app/packaging/package makes them reproducible: it sets SOURCE_DATE_EPOCH to the time of the commit.
set(CPACK_GENERATOR "DEB;TGZ")
set(CPACK_VERBATIM_VARIABLES ON)
set(CPACK_PACKAGE_NAME tenter)
set(CPACK_PACKAGE_VENDOR "The Tenter authors")
set(CPACK_PACKAGE_CONTACT "The Tenter authors <authors@tenter.example>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "design a row of cards that works at every viewport width")
set(CPACK_PACKAGE_CHECKSUM SHA256)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE
                                                WORLD_READ WORLD_EXECUTE)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_THREADS 0)
# The archive holds one folder; the packages are split.
set(CPACK_COMPONENTS_ALL command library)
if(TENTER_DESKTOP)
  list(APPEND CPACK_COMPONENTS_ALL window)
endif()
set(CPACK_COMPONENTS_GROUPING IGNORE)
set(CPACK_DEB_COMPONENT_INSTALL ON)
set(CPACK_PROJECT_CONFIG_FILE ${CMAKE_CURRENT_SOURCE_DIR}/of_generator.cmake)
set(CPACK_PRE_BUILD_SCRIPTS ${CMAKE_CURRENT_SOURCE_DIR}/finish_tree.cmake)
set(CPACK_TENTER_OVERRIDES ${resources}/debian)

set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_RELEASE 1)
set(CPACK_DEBIAN_ENABLE_COMPONENT_DEPENDS OFF)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(debian_version ${PROJECT_VERSION}-${CPACK_DEBIAN_PACKAGE_RELEASE})

# A description: the summary on the first line, then paragraphs; Debian Policy § 5.6.13.
set(about "Tenter computes a row of cards (picture, heading, paragraph, button) at every
viewport width: where lines wrap, how long the lines are, where columns stack.
It solves font sizes from conditions such as \"heading in at most 2 lines\", and
writes the stylesheet, scoped to the row.")

set(CPACK_DEBIAN_COMMAND_PACKAGE_NAME tenter-cli)
set(CPACK_DEBIAN_COMMAND_PACKAGE_SECTION web)
set(CPACK_COMPONENT_COMMAND_DESCRIPTION "compute and check a fluid row of cards at every viewport width
${about}
.
This package has the command line, the sample projects and the schema of
project files. It needs no display.")
# libvips is loaded when the first picture is read, so it is not in the list of linked libraries.
set(CPACK_DEBIAN_COMMAND_PACKAGE_DEPENDS "libvips42 (>= 8.13)")
# The families of the sample projects and of new rows. Without one, text is measured with another family, and Tenter
# says so.
set(CPACK_DEBIAN_COMMAND_PACKAGE_RECOMMENDS "fonts-cabin, fonts-ebgaramond, fonts-hosny-amiri, fonts-inter-variable, fonts-karla, fonts-lato, fonts-league-spartan, fonts-manrope, fonts-noto-core, fonts-roboto-slab, fonts-vollkorn")

set(CPACK_DEBIAN_WINDOW_PACKAGE_NAME tenter)
set(CPACK_DEBIAN_WINDOW_PACKAGE_SECTION web)
set(CPACK_COMPONENT_WINDOW_DESCRIPTION "design a row of cards that works at every viewport width
${about}
.
This package has the window: one axis of viewport widths for the row, its
bands, font sizes, line lengths and findings.")
# The samples of the start page are in tenter-cli.
set(CPACK_DEBIAN_WINDOW_PACKAGE_DEPENDS "tenter-cli (= ${debian_version})")
set(CPACK_DEBIAN_WINDOW_PACKAGE_RECOMMENDS "qt6-wayland")
# Compares its layout with an installed browser.
set(CPACK_DEBIAN_WINDOW_PACKAGE_SUGGESTS "chromium | firefox-esr")

set(CPACK_DEBIAN_LIBRARY_PACKAGE_NAME libtenter-dev)
set(CPACK_DEBIAN_LIBRARY_PACKAGE_SECTION libdevel)
set(CPACK_COMPONENT_LIBRARY_DESCRIPTION "computation of fluid rows of cards, as a C++ library
${about}
.
This package has the headers and the static library, for CMake and
pkg-config.")
set(CPACK_DEBIAN_LIBRARY_PACKAGE_DEPENDS "nlohmann-json3-dev, libharfbuzz-dev, libicu-dev, libfontconfig-dev, libwoff-dev, libgumbo-dev, libcmark-dev, libcairo2-dev, libfreetype-dev, libglpk-dev, zlib1g-dev, libvips42")

include(CPack)
