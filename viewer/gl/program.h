// A GLSL program from the files of shaders/. OpenGL; needs a current context.
#pragma once

#include <initializer_list>
#include <map>
#include <span>
#include <string>
#include <string_view>

#include <glm/mat4x4.hpp>
#include <glm/vec2.hpp>
#include <glm/vec3.hpp>
#include <glm/vec4.hpp>

namespace viewer {

class Program {
 public:
  // Each argument is a list of files of shaders/ that together make one shader, for example
  // {"view.glsl", "surface.vert"}; the last file's ending says which kind. Throws
  // std::runtime_error with the driver's words when one does not compile or link.
  Program(std::initializer_list<std::initializer_list<std::string_view>> shaders);
  ~Program();
  Program(const Program&) = delete;
  Program& operator=(const Program&) = delete;

  void use() const;
  // All of these act on the program in use; names the program does not have are skipped.
  void set(const char* name, int value);
  void set(const char* name, float value);
  void set(const char* name, const glm::vec2& value);
  void set(const char* name, const glm::vec3& value);
  void set(const char* name, const glm::vec4& value);
  void set(const char* name, const glm::mat4& value);
  void set(const char* name, std::span<const glm::vec4> values);

 private:
  int locationOf(const char* name);

  unsigned id_ = 0;
  std::map<std::string, int, std::less<>> locations_;
};

}  // namespace viewer
