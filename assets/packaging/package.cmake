# cmake --install and the Debian package: the program, the demo jobs, the desktop entry, the man page.
install(TARGETS stringcourse RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
if(TARGET stringcourse_film)  # where film_out.cpp looks for it
  install(TARGETS stringcourse_film LIBRARY DESTINATION lib/stringcourse)
endif()
install(DIRECTORY ${CMAKE_SOURCE_DIR}/assets/jobs/ DESTINATION ${CMAKE_INSTALL_DATADIR}/stringcourse/jobs
        FILES_MATCHING PATTERN "*.toml" PATTERN "*.csv")
install(FILES ${CMAKE_SOURCE_DIR}/assets/packaging/stringcourse.desktop
        DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${CMAKE_SOURCE_DIR}/assets/packaging/stringcourse.svg
        DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(FILES ${CMAKE_SOURCE_DIR}/README.md DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(FILES ${CMAKE_SOURCE_DIR}/assets/licence.txt DESTINATION ${CMAKE_INSTALL_DOCDIR} RENAME copyright)
if(EXISTS ${CMAKE_SOURCE_DIR}/assets/job-file.md)
  install(FILES ${CMAKE_SOURCE_DIR}/assets/job-file.md DESTINATION ${CMAKE_INSTALL_DOCDIR})
endif()

# Man pages are kept compressed on Debian; -n leaves the time out, so that builds are repeatable.
set(MAN_PAGE ${CMAKE_BINARY_DIR}/stringcourse.1.gz)
add_custom_command(OUTPUT ${MAN_PAGE}
  COMMAND gzip -9 -n -c ${CMAKE_SOURCE_DIR}/assets/packaging/stringcourse.1 > ${MAN_PAGE}
  DEPENDS ${CMAKE_SOURCE_DIR}/assets/packaging/stringcourse.1 VERBATIM)
add_custom_target(man_page ALL DEPENDS ${MAN_PAGE})
install(FILES ${MAN_PAGE} DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME stringcourse)
set(CPACK_PACKAGE_CONTACT "The Stringcourse authors <stringcourse@localhost>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "${PROJECT_DESCRIPTION}")
set(CPACK_PACKAGE_DESCRIPTION
"Reads a job file with the numbers on the designer's drawing and shows the
building on its ground, stage by stage, with string lines, corner letters
and levels over it; writes heights, quantities, pictures and a GLB file for
the designer.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Found at run time, so the linker does not know them: the graphics drivers and the typefaces.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libgl1, libegl1")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "fonts-b612, fonts-noto-core, fonts-droid-fallback, libgl1-mesa-dri, libegl-mesa0")
include(CPack)
