#include "viewer/gl/render_target.h"

#include <epoxy/gl.h>

#include <algorithm>

namespace viewer {

namespace {

unsigned makeBuffer(int samples, GLenum format, int width, int height) {
  unsigned buffer = 0;
  glGenRenderbuffers(1, &buffer);
  glBindRenderbuffer(GL_RENDERBUFFER, buffer);
  glRenderbufferStorageMultisample(GL_RENDERBUFFER, samples > 1 ? samples : 0, format, width,
                                   height);
  return buffer;
}

}  // namespace

void RenderTarget::resize(int width, int height, int samples) {
  int most = 1;
  glGetIntegerv(GL_MAX_SAMPLES, &most);
  samples = std::clamp(samples, 1, std::max(1, most));
  if (width == width_ && height == height_ && samples == samples_) return;
  free();
  width_ = width;
  height_ = height;
  samples_ = samples;
  glGenFramebuffers(1, &framebuffer_);
  glBindFramebuffer(GL_FRAMEBUFFER, framebuffer_);
  colour_ = makeBuffer(samples, GL_RGBA8, width, height);
  glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER, colour_);
  depth_ = makeBuffer(samples, GL_DEPTH24_STENCIL8, width, height);
  glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_DEPTH_STENCIL_ATTACHMENT, GL_RENDERBUFFER, depth_);
}

void RenderTarget::bind() const {
  glBindFramebuffer(GL_FRAMEBUFFER, framebuffer_);
  glViewport(0, 0, width_, height_);
}

void RenderTarget::bindResolved() {
  if (samples_ <= 1) {
    glBindFramebuffer(GL_READ_FRAMEBUFFER, framebuffer_);
    return;
  }
  if (resolved_ == 0) {
    glGenFramebuffers(1, &resolved_);
    glBindFramebuffer(GL_FRAMEBUFFER, resolved_);
    resolvedColour_ = makeBuffer(1, GL_RGBA8, width_, height_);
    glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER,
                              resolvedColour_);
  }
  resolveInto(resolved_);
  glBindFramebuffer(GL_READ_FRAMEBUFFER, resolved_);
}

void RenderTarget::resolveInto(unsigned framebuffer) const {
  glBindFramebuffer(GL_READ_FRAMEBUFFER, framebuffer_);
  glBindFramebuffer(GL_DRAW_FRAMEBUFFER, framebuffer);
  glBlitFramebuffer(0, 0, width_, height_, 0, 0, width_, height_, GL_COLOR_BUFFER_BIT, GL_NEAREST);
}

void RenderTarget::free() {
  if (framebuffer_) glDeleteFramebuffers(1, &framebuffer_);
  if (resolved_) glDeleteFramebuffers(1, &resolved_);
  for (unsigned* buffer : {&colour_, &depth_, &resolvedColour_}) {
    if (*buffer) glDeleteRenderbuffers(1, buffer);
    *buffer = 0;
  }
  framebuffer_ = resolved_ = 0;
  width_ = height_ = 0;
  samples_ = -1;
}

}  // namespace viewer
