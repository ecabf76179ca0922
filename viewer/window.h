// The window on the screen with its OpenGL context, and what the user does to it.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <glm/vec2.hpp>
#include <glm/vec4.hpp>

struct GLFWwindow;

namespace viewer {

// A key that went down, or a letter that came of it.
struct KeyPress {
  int key = 0;  // GLFW_KEY_...; 0 for a letter
  int modifiers = 0;
  unsigned letter = 0;  // Unicode
};

struct ButtonEvent {
  int button = 0;  // 0 left, 1 right, 2 middle
  bool down = false;
  glm::vec2 at{0, 0};  // where the pointer was then
  int modifiers = 0;   // GLFW_MOD_..., as they were then
};

class Window {
 public:
  // Null when there is no display or no OpenGL 3.3; then `why` says so in one line.
  static std::unique_ptr<Window> open(const std::string& title, std::string& why);
  ~Window();
  Window(const Window&) = delete;
  Window& operator=(const Window&) = delete;

  bool shouldClose() const;
  // Takes back that it has been asked to close.
  void stayOpen();
  // On the whole of the screen that the window is on, or back where it was.
  void setFullScreen(bool on);
  void setTitle(const std::string& title);
  float contentScale() const;
  glm::ivec2 size() const;             // in the units of the mouse
  glm::ivec2 framebufferSize() const;  // in pixels
  double now() const;                  // seconds

  // Handles what has happened; waits for at most `seconds` when nothing has. True when anything
  // happened that may change the picture.
  bool waitFor(double seconds);
  // Keys that went down since the last call, repeats included, and the letters between them, in the
  // order of the hand: none is lost between two frames.
  std::vector<KeyPress> takeKeys();
  // Button presses and releases since the last call, each with its own place and keys held: on a
  // slow machine the hand is elsewhere by the time the next frame is drawn.
  std::vector<ButtonEvent> takeButtons();
  void swap();
  GLFWwindow* handle() const { return handle_; }

 private:
  explicit Window(GLFWwindow* handle);
  void listen();
  static Window& of(GLFWwindow* handle);

  GLFWwindow* handle_;
  std::vector<KeyPress> keys_;
  std::vector<ButtonEvent> buttons_;
  glm::vec2 pointer_{0, 0};
  glm::ivec4 place_{0, 0, 0, 0};  // where it was before: position and size; no size: not so
  bool stirred_ = true;
};

}  // namespace viewer
