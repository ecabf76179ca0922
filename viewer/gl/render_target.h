// A framebuffer of colour, depth and stencil, with multisamples or without. OpenGL; needs a current
// context.
#pragma once

namespace viewer {

class RenderTarget {
 public:
  RenderTarget() = default;
  ~RenderTarget() = default;  // the context may be gone: call free()
  RenderTarget(const RenderTarget&) = delete;
  RenderTarget& operator=(const RenderTarget&) = delete;

  // Does nothing when size and samples are those it has. Samples are cut to what the driver does.
  void resize(int width, int height, int samples);
  void bind() const;
  // Binds, for reading, a framebuffer of one sample with the same picture.
  void bindResolved();
  // Copies the picture into another framebuffer of the same size.
  void resolveInto(unsigned framebuffer) const;
  void free();

  int width() const { return width_; }
  int height() const { return height_; }

 private:
  unsigned framebuffer_ = 0, colour_ = 0, depth_ = 0;
  unsigned resolved_ = 0, resolvedColour_ = 0;
  int width_ = 0, height_ = 0, samples_ = -1;
};

}  // namespace viewer
