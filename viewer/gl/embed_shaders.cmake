# Writes OUT, a source file that holds each of FILES as text, found by file name.
set(body "")
foreach(file ${FILES})
  get_filename_component(name ${file} NAME)
  file(READ ${file} text)
  string(APPEND body "  if (name == \"${name}\") return R\"glsl(${text})glsl\";\n")
endforeach()
file(WRITE ${OUT} "#include \"viewer/gl/shaders.h\"\n\nnamespace viewer {\n\nstd::string_view shaderText(std::string_view name) {\n${body}  return {};\n}\n\n}  // namespace viewer\n")
