#include "viewer/gl/offscreen.h"

#include <epoxy/egl.h>
#include <epoxy/gl.h>

#include <algorithm>
#include <array>
#include <cstring>
#include <map>

#include "viewer/gl/render_target.h"

namespace viewer {

namespace {

// EGL counts nothing: ending a display ends it for everybody, so the last user does it.
std::map<EGLDisplay, int>& displayUsers() {
  static std::map<EGLDisplay, int> users;
  return users;
}

struct Connection {
  EGLDisplay display = EGL_NO_DISPLAY;
  EGLContext context = EGL_NO_CONTEXT;
};

void release(Connection& c) {
  if (c.display == EGL_NO_DISPLAY) return;
  if (c.context != EGL_NO_CONTEXT) {
    eglMakeCurrent(c.display, EGL_NO_SURFACE, EGL_NO_SURFACE, EGL_NO_CONTEXT);
    eglDestroyContext(c.display, c.context);
  }
  if (--displayUsers()[c.display] == 0) eglTerminate(c.display);
  c = {};
}

// A current 3.3 core context on this display, or nothing with the reason added to `why`.
bool connect(EGLDisplay display, const std::string& platform, Connection& c, std::string& why) {
  const auto refuse = [&](const char* reason) {
    why += (why.empty() ? "" : "; ") + platform + ": " + reason;
    release(c);
    return false;
  };
  if (display == EGL_NO_DISPLAY) return refuse("not there");
  if (!eglInitialize(display, nullptr, nullptr)) return refuse("does not start");
  c.display = display;
  ++displayUsers()[display];
  if (!epoxy_has_egl_extension(display, "EGL_KHR_surfaceless_context"))
    return refuse("cannot draw without a window");
  if (!eglBindAPI(EGL_OPENGL_API)) return refuse("has no OpenGL");
  const std::array<EGLint, 5> wanted{EGL_SURFACE_TYPE, 0, EGL_RENDERABLE_TYPE, EGL_OPENGL_BIT,
                                     EGL_NONE};
  EGLConfig config = nullptr;
  EGLint count = 0;
  if (!eglChooseConfig(display, wanted.data(), &config, 1, &count) || count == 0)
    return refuse("has no OpenGL");
  const std::array<EGLint, 7> version{EGL_CONTEXT_MAJOR_VERSION,
                                      3,
                                      EGL_CONTEXT_MINOR_VERSION,
                                      3,
                                      EGL_CONTEXT_OPENGL_PROFILE_MASK,
                                      EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT,
                                      EGL_NONE};
  c.context = eglCreateContext(display, config, EGL_NO_CONTEXT, version.data());
  if (c.context == EGL_NO_CONTEXT) return refuse("has no OpenGL 3.3");
  if (!eglMakeCurrent(display, EGL_NO_SURFACE, EGL_NO_SURFACE, c.context))
    return refuse("its OpenGL cannot be used");
  return true;
}

bool connectAnywhere(Connection& c, std::string& why) {
  const char* known = eglQueryString(EGL_NO_DISPLAY, EGL_EXTENSIONS);
  const std::string extensions = known ? known : "";
  if (extensions.find("EGL_EXT_platform_base") == std::string::npos) {
    why = "EGL cannot make a picture without a display here";
    return false;
  }
  if (extensions.find("EGL_MESA_platform_surfaceless") != std::string::npos &&
      connect(eglGetPlatformDisplayEXT(EGL_PLATFORM_SURFACELESS_MESA, EGL_DEFAULT_DISPLAY, nullptr),
              "without a surface", c, why))
    return true;
  if (extensions.find("EGL_EXT_platform_device") == std::string::npos ||
      extensions.find("EGL_EXT_device_enumeration") == std::string::npos)
    return false;
  std::array<EGLDeviceEXT, 16> devices{};
  EGLint count = 0;
  if (!eglQueryDevicesEXT(static_cast<EGLint>(devices.size()), devices.data(), &count))
    return false;
  for (EGLint i = 0; i < count; ++i) {
    if (connect(eglGetPlatformDisplayEXT(EGL_PLATFORM_DEVICE_EXT, devices[static_cast<size_t>(i)],
                                         nullptr),
                "graphics device " + std::to_string(i), c, why))
      return true;
  }
  return false;
}

}  // namespace

struct Offscreen::Impl {
  Connection connection;
  RenderTarget target;

  // With several about, the one that is used must be the one that the calls go to.
  void makeCurrent() const {
    if (connection.context == EGL_NO_CONTEXT) return;
    eglMakeCurrent(connection.display, EGL_NO_SURFACE, EGL_NO_SURFACE, connection.context);
  }
};

Offscreen::Offscreen() : impl_(std::make_unique<Impl>()) {}

Offscreen::~Offscreen() {
  impl_->makeCurrent();
  impl_->target.free();
  release(impl_->connection);
}

std::unique_ptr<Offscreen> Offscreen::create(std::string& why) {
  why.clear();
  std::unique_ptr<Offscreen> made(new Offscreen);
  if (connectAnywhere(made->impl_->connection, why)) {
    why.clear();
    return made;
  }
  why = "no OpenGL 3.3 to be had (" + (why.empty() ? std::string("no driver") : why) + ")";
  return nullptr;
}

void Offscreen::begin(int width, int height, int samples) {
  impl_->makeCurrent();
  impl_->target.resize(width, height, samples);
  impl_->target.bind();
}

Image Offscreen::read() {
  Image image;
  image.width = impl_->target.width();
  image.height = impl_->target.height();
  const size_t row = static_cast<size_t>(image.width) * 4;
  std::vector<std::uint8_t> upward(row * static_cast<size_t>(image.height));
  impl_->target.bindResolved();
  glPixelStorei(GL_PACK_ALIGNMENT, 1);
  glReadPixels(0, 0, image.width, image.height, GL_RGBA, GL_UNSIGNED_BYTE, upward.data());
  impl_->target.bind();
  image.rgba.resize(upward.size());
  for (size_t y = 0; y < static_cast<size_t>(image.height); ++y)
    std::memcpy(&image.rgba[y * row], &upward[(static_cast<size_t>(image.height) - 1 - y) * row],
                row);
  // A picture has no holes: what blending left in alpha is nobody's business.
  for (size_t i = 3; i < image.rgba.size(); i += 4) image.rgba[i] = 255;
  return image;
}

}  // namespace viewer
