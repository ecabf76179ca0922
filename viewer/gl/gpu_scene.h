// A scene's arrays on the graphics card. OpenGL; needs a current context.
#pragma once

#include <cstdint>

#include "viewer/draw_list.h"
#include "viewer/scene.h"

namespace viewer {

// Describes arrays of Vertex in the buffer that is bound to the vertex array that is bound.
void describeFaces();

class GpuScene {
 public:
  GpuScene();
  ~GpuScene();
  GpuScene(const GpuScene&) = delete;
  GpuScene& operator=(const GpuScene&) = delete;

  void upload(const Scene& scene);
  std::uint64_t bytesUploaded() const { return bytes_; }

  // All of these draw with the program in use and return the number of draw calls.
  unsigned drawFaces(const Pieces& pieces) const;
  unsigned drawFaces(std::uint32_t first, std::uint32_t count) const;
  unsigned drawEdges(const Pieces& pieces) const;
  // Binds the table of elements to a texture unit.
  void bindElements(int unit) const;
  // The same of the bond of leaves.
  void bindLeaves(int unit) const;

 private:
  unsigned faces_ = 0, edges_ = 0;  // vertex arrays
  unsigned vertexBuffer_ = 0, indexBuffer_ = 0, edgeBuffer_ = 0;
  unsigned elementBuffer_ = 0, elementTexture_ = 0;
  unsigned leafBuffer_ = 0, leafTexture_ = 0;
  std::uint64_t bytes_ = 0;
};

}  // namespace viewer
