#include "viewer/gl/program.h"

#include <epoxy/gl.h>

#include <stdexcept>
#include <vector>

#include <glm/gtc/type_ptr.hpp>

#include "viewer/gl/shaders.h"

namespace viewer {

namespace {

GLenum kindOf(std::string_view file) {
  if (file.ends_with(".vert")) return GL_VERTEX_SHADER;
  if (file.ends_with(".geom")) return GL_GEOMETRY_SHADER;
  return GL_FRAGMENT_SHADER;
}

unsigned compile(std::initializer_list<std::string_view> files) {
  std::string text = "#version 330 core\n";
  std::string name;
  for (const std::string_view file : files) {
    const std::string_view part = shaderText(file);
    if (part.empty()) throw std::runtime_error("no shader file " + std::string(file));
    text += part;
    name = file;
  }
  const unsigned shader = glCreateShader(kindOf(name));
  const char* source = text.c_str();
  glShaderSource(shader, 1, &source, nullptr);
  glCompileShader(shader);
  int well = 0;
  glGetShaderiv(shader, GL_COMPILE_STATUS, &well);
  if (well) return shader;
  std::vector<char> log(4096, '\0');
  glGetShaderInfoLog(shader, static_cast<int>(log.size() - 1), nullptr, log.data());
  glDeleteShader(shader);
  throw std::runtime_error("shader " + name + " does not compile: " + log.data());
}

}  // namespace

Program::Program(std::initializer_list<std::initializer_list<std::string_view>> shaders)
    : id_(glCreateProgram()) {
  for (const auto& files : shaders) {
    const unsigned shader = compile(files);
    glAttachShader(id_, shader);
    glDeleteShader(shader);  // goes with the program
  }
  glLinkProgram(id_);
  int well = 0;
  glGetProgramiv(id_, GL_LINK_STATUS, &well);
  if (well) return;
  std::vector<char> log(4096, '\0');
  glGetProgramInfoLog(id_, static_cast<int>(log.size() - 1), nullptr, log.data());
  throw std::runtime_error(std::string("shaders do not link: ") + log.data());
}

Program::~Program() { glDeleteProgram(id_); }

void Program::use() const { glUseProgram(id_); }

int Program::locationOf(const char* name) {
  const auto found = locations_.find(std::string_view(name));
  if (found != locations_.end()) return found->second;
  return locations_[name] = glGetUniformLocation(id_, name);
}

void Program::set(const char* name, int value) { glUniform1i(locationOf(name), value); }
void Program::set(const char* name, float value) { glUniform1f(locationOf(name), value); }
void Program::set(const char* name, const glm::vec2& value) {
  glUniform2fv(locationOf(name), 1, glm::value_ptr(value));
}
void Program::set(const char* name, const glm::vec3& value) {
  glUniform3fv(locationOf(name), 1, glm::value_ptr(value));
}
void Program::set(const char* name, const glm::vec4& value) {
  glUniform4fv(locationOf(name), 1, glm::value_ptr(value));
}
void Program::set(const char* name, const glm::mat4& value) {
  glUniformMatrix4fv(locationOf(name), 1, GL_FALSE, glm::value_ptr(value));
}
void Program::set(const char* name, std::span<const glm::vec4> values) {
  glUniform4fv(locationOf(name), static_cast<int>(values.size()), glm::value_ptr(values[0]));
}

}  // namespace viewer
