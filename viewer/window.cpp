#include "viewer/window.h"

#include <GLFW/glfw3.h>

#include <algorithm>
#include <utility>

namespace viewer {
namespace {

// GLFW tells of errors through a plain function; the last one explains why opening failed.
std::string& lastError() {
  thread_local std::string text;
  return text;
}

// Very wide screens that tell of no scale of their own would have lettering too small to read.
float leastScale() {
  constexpr int kVeryWide = 3200;
  GLFWmonitor* monitor = glfwGetPrimaryMonitor();
  const GLFWvidmode* mode = monitor ? glfwGetVideoMode(monitor) : nullptr;
  return mode && mode->width >= kVeryWide ? 1.5f : 1.0f;
}

glm::ivec2 firstSize() {
  glm::ivec2 size{1440, 900};
  if (GLFWmonitor* monitor = glfwGetPrimaryMonitor()) {
    int x = 0, y = 0, width = 0, height = 0;
    float scale = 1;
    glfwGetMonitorWorkarea(monitor, &x, &y, &width, &height);
    glfwGetMonitorContentScale(monitor, &scale, nullptr);
    size = glm::ivec2(glm::vec2(size) * std::max(scale, leastScale()));
    // A screen that it nearly fills, it fills.
    if (size.x > width * 9 / 10) size.x = width;
    if (size.y > height * 9 / 10) size.y = height;
  }
  return size;
}

}  // namespace

std::unique_ptr<Window> Window::open(const std::string& title, std::string& why) {
  glfwSetErrorCallback([](int, const char* text) { lastError() = text; });
  if (!glfwInit()) {
    why = "no display (" + lastError() + ")";
    return nullptr;
  }
  glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
  glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 3);
  glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
  glfwWindowHint(GLFW_OPENGL_FORWARD_COMPAT, GLFW_TRUE);
  glfwWindowHint(GLFW_DEPTH_BITS, 24);
  glfwWindowHint(GLFW_STENCIL_BITS, 8);
  const glm::ivec2 size = firstSize();
  GLFWwindow* handle = glfwCreateWindow(size.x, size.y, title.c_str(), nullptr, nullptr);
  if (!handle) {
    why = lastError();
    glfwTerminate();
    return nullptr;
  }
  glfwMakeContextCurrent(handle);
  glfwSwapInterval(1);
  glfwSetWindowSizeLimits(handle, 760, 480, GLFW_DONT_CARE, GLFW_DONT_CARE);
  return std::unique_ptr<Window>(new Window(handle));
}

Window::Window(GLFWwindow* handle) : handle_(handle) {
  glfwSetWindowUserPointer(handle_, this);
  listen();
}

Window::~Window() {
  glfwDestroyWindow(handle_);
  glfwTerminate();
}

Window& Window::of(GLFWwindow* handle) {
  return *static_cast<Window*>(glfwGetWindowUserPointer(handle));
}

void Window::listen() {
  glfwSetKeyCallback(handle_, [](GLFWwindow* w, int key, int, int action, int modifiers) {
    Window& window = of(w);
    window.stirred_ = true;
    if (action != GLFW_RELEASE) window.keys_.push_back({key, modifiers, 0});
  });
  glfwSetCharCallback(handle_, [](GLFWwindow* w, unsigned letter) {
    of(w).stirred_ = true;
    of(w).keys_.push_back({0, 0, letter});
  });
  glfwSetCursorPosCallback(handle_, [](GLFWwindow* w, double x, double y) {
    of(w).stirred_ = true;
    of(w).pointer_ = {float(x), float(y)};
  });
  glfwSetCursorEnterCallback(handle_, [](GLFWwindow* w, int) { of(w).stirred_ = true; });
  glfwSetMouseButtonCallback(handle_, [](GLFWwindow* w, int button, int action, int modifiers) {
    Window& window = of(w);
    window.stirred_ = true;
    // Not asked of the system, which would say where the pointer is by now.
    window.buttons_.push_back({button, action == GLFW_PRESS, window.pointer_, modifiers});
  });
  glfwSetScrollCallback(handle_, [](GLFWwindow* w, double, double) { of(w).stirred_ = true; });
  glfwSetWindowRefreshCallback(handle_, [](GLFWwindow* w) { of(w).stirred_ = true; });
  glfwSetFramebufferSizeCallback(handle_, [](GLFWwindow* w, int, int) { of(w).stirred_ = true; });
  glfwSetWindowFocusCallback(handle_, [](GLFWwindow* w, int) { of(w).stirred_ = true; });
}

bool Window::shouldClose() const { return glfwWindowShouldClose(handle_) != 0; }

void Window::stayOpen() { glfwSetWindowShouldClose(handle_, GLFW_FALSE); }

namespace {

// The screen that has most of a window.
GLFWmonitor* screenOf(const glm::ivec4& window) {
  int count = 0;
  GLFWmonitor** screens = glfwGetMonitors(&count);
  GLFWmonitor* best = glfwGetPrimaryMonitor();
  long most = 0;
  for (int i = 0; i < count; ++i) {
    int x = 0, y = 0;
    glfwGetMonitorPos(screens[i], &x, &y);
    const GLFWvidmode* mode = glfwGetVideoMode(screens[i]);
    if (!mode) continue;
    const long wide = std::min(window.x + window.z, x + mode->width) - std::max(window.x, x);
    const long high = std::min(window.y + window.w, y + mode->height) - std::max(window.y, y);
    const long shared = std::max(wide, 0L) * std::max(high, 0L);
    if (shared <= most) continue;
    most = shared;
    best = screens[i];
  }
  return best;
}

}  // namespace

void Window::setFullScreen(bool on) {
  if (on == (place_.z > 0)) return;
  if (!on) {
    glfwSetWindowMonitor(handle_, nullptr, place_.x, place_.y, place_.z, place_.w, GLFW_DONT_CARE);
    place_ = {0, 0, 0, 0};
    return;
  }
  glm::ivec4 place{0, 0, 0, 0};
  glfwGetWindowPos(handle_, &place.x, &place.y);
  glfwGetWindowSize(handle_, &place.z, &place.w);
  GLFWmonitor* screen = screenOf(place);
  const GLFWvidmode* mode = screen ? glfwGetVideoMode(screen) : nullptr;
  if (!mode) return;
  place_ = place;
  glfwSetWindowMonitor(handle_, screen, 0, 0, mode->width, mode->height, mode->refreshRate);
}

void Window::setTitle(const std::string& title) { glfwSetWindowTitle(handle_, title.c_str()); }

float Window::contentScale() const {
  float x = 1, y = 1;
  glfwGetWindowContentScale(handle_, &x, &y);
  // Where the window's own units are larger than pixels, the scale is in them already.
  const glm::ivec2 window = size(), pixels = framebufferSize();
  const float own = window.x > 0 ? float(pixels.x) / float(window.x) : 1;
  const float told = own > 1.01f || x > 1.01f ? x : leastScale();
  return std::clamp(told / std::max(own, 0.1f), 1.0f, 4.0f);
}

glm::ivec2 Window::size() const {
  glm::ivec2 s{0, 0};
  glfwGetWindowSize(handle_, &s.x, &s.y);
  return s;
}

glm::ivec2 Window::framebufferSize() const {
  glm::ivec2 s{0, 0};
  glfwGetFramebufferSize(handle_, &s.x, &s.y);
  return s;
}

double Window::now() const { return glfwGetTime(); }

bool Window::waitFor(double seconds) {
  if (seconds > 0)
    glfwWaitEventsTimeout(seconds);
  else
    glfwPollEvents();
  return std::exchange(stirred_, false);
}

std::vector<KeyPress> Window::takeKeys() { return std::exchange(keys_, {}); }

std::vector<ButtonEvent> Window::takeButtons() { return std::exchange(buttons_, {}); }

void Window::swap() { glfwSwapBuffers(handle_); }

}  // namespace viewer
