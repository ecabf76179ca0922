#include "viewer/gl/gpu_scene.h"

#include <epoxy/gl.h>

#include <cstddef>

#include <glm/vec4.hpp>

namespace viewer {

namespace {

const void* at(size_t offset) { return reinterpret_cast<const void*>(offset); }

void describeEdges() {
  constexpr int kStride = sizeof(EdgeVertex);
  for (unsigned i = 0; i < 5; ++i) glEnableVertexAttribArray(i);
  glVertexAttribPointer(0, 3, GL_FLOAT, GL_FALSE, kStride, at(offsetof(EdgeVertex, position)));
  glVertexAttribPointer(1, 2, GL_FLOAT, GL_FALSE, kStride, at(offsetof(EdgeVertex, appears)));
  glVertexAttribIPointer(2, 1, GL_UNSIGNED_INT, kStride, at(offsetof(EdgeVertex, element)));
  glVertexAttribPointer(3, 4, GL_BYTE, GL_TRUE, kStride, at(offsetof(EdgeVertex, normalA)));
  glVertexAttribPointer(4, 4, GL_BYTE, GL_TRUE, kStride, at(offsetof(EdgeVertex, normalB)));
}

template <typename Items>
std::uint64_t fill(GLenum target, unsigned buffer, const Items& data) {
  glBindBuffer(target, buffer);
  const size_t bytes = data.size() * sizeof(data[0]);
  glBufferData(target, static_cast<GLsizeiptr>(bytes), data.data(), GL_STATIC_DRAW);
  return bytes;
}

int materialOf(const Scene& scene, const ElementRange& range) {
  if (range.indexCount == 0) return 0;
  return static_cast<int>(scene.vertices[scene.indices[range.firstIndex]].material & 31u);
}

}  // namespace

void describeFaces() {
  constexpr int kStride = sizeof(Vertex);
  for (unsigned i = 0; i < 4; ++i) glEnableVertexAttribArray(i);
  glVertexAttribPointer(0, 3, GL_FLOAT, GL_FALSE, kStride, at(offsetof(Vertex, position)));
  glVertexAttribPointer(1, 3, GL_FLOAT, GL_FALSE, kStride, at(offsetof(Vertex, normal)));
  glVertexAttribPointer(2, 2, GL_FLOAT, GL_FALSE, kStride, at(offsetof(Vertex, appears)));
  glVertexAttribIPointer(3, 2, GL_UNSIGNED_INT, kStride, at(offsetof(Vertex, element)));
}

GpuScene::GpuScene() {
  glGenVertexArrays(1, &faces_);
  glGenVertexArrays(1, &edges_);
  for (unsigned* buffer :
       {&vertexBuffer_, &indexBuffer_, &edgeBuffer_, &elementBuffer_, &leafBuffer_})
    glGenBuffers(1, buffer);
  glGenTextures(1, &elementTexture_);
  glGenTextures(1, &leafTexture_);
  glBindVertexArray(faces_);
  glBindBuffer(GL_ARRAY_BUFFER, vertexBuffer_);
  glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, indexBuffer_);
  describeFaces();
  glBindVertexArray(edges_);
  glBindBuffer(GL_ARRAY_BUFFER, edgeBuffer_);
  describeEdges();
  glBindVertexArray(0);
}

GpuScene::~GpuScene() {
  glDeleteVertexArrays(1, &faces_);
  glDeleteVertexArrays(1, &edges_);
  for (unsigned* buffer :
       {&vertexBuffer_, &indexBuffer_, &edgeBuffer_, &elementBuffer_, &leafBuffer_})
    glDeleteBuffers(1, buffer);
  glDeleteTextures(1, &elementTexture_);
  glDeleteTextures(1, &leafTexture_);
}

void GpuScene::upload(const Scene& scene) {
  std::vector<glm::vec4> table;
  table.reserve(scene.elements.size() * 2 + 2);
  for (const ElementRange& range : scene.elements) {
    table.emplace_back(range.wallStart, range.along);
    if (range.leaf)
      table.emplace_back(range.leaf + 2, 0, -materialOf(scene, range), range.thickness);
    else
      table.emplace_back(range.wallPhase, range.quiet ? 1 : 0, range.soil ? 1 : 0, range.thickness);
  }
  if (table.empty()) table.resize(2);
  glBindVertexArray(faces_);  // owns the binding of the index buffer
  bytes_ += fill(GL_ELEMENT_ARRAY_BUFFER, indexBuffer_, scene.indices);
  glBindVertexArray(0);
  bytes_ += fill(GL_ARRAY_BUFFER, vertexBuffer_, scene.vertices);
  bytes_ += fill(GL_ARRAY_BUFFER, edgeBuffer_, scene.edges);
  bytes_ += fill(GL_TEXTURE_BUFFER, elementBuffer_, table);
  glBindTexture(GL_TEXTURE_BUFFER, elementTexture_);
  glTexBuffer(GL_TEXTURE_BUFFER, GL_RGBA32F, elementBuffer_);
  bytes_ += fill(GL_TEXTURE_BUFFER, leafBuffer_,
                 scene.leaves.empty() ? std::vector<glm::uvec4>(1) : scene.leaves);
  glBindTexture(GL_TEXTURE_BUFFER, leafTexture_);
  glTexBuffer(GL_TEXTURE_BUFFER, GL_RGBA32UI, leafBuffer_);
}

void GpuScene::bindElements(int unit) const {
  glActiveTexture(GL_TEXTURE0 + static_cast<unsigned>(unit));
  glBindTexture(GL_TEXTURE_BUFFER, elementTexture_);
}

void GpuScene::bindLeaves(int unit) const {
  glActiveTexture(GL_TEXTURE0 + static_cast<unsigned>(unit));
  glBindTexture(GL_TEXTURE_BUFFER, leafTexture_);
}

unsigned GpuScene::drawFaces(const Pieces& pieces) const {
  if (pieces.empty()) return 0;
  std::vector<GLsizei> counts(pieces.count.begin(), pieces.count.end());
  std::vector<const void*> offsets;
  offsets.reserve(counts.size());
  for (const std::uint32_t first : pieces.first)
    offsets.push_back(at(first * sizeof(std::uint32_t)));
  glBindVertexArray(faces_);
  glMultiDrawElements(GL_TRIANGLES, counts.data(), GL_UNSIGNED_INT, offsets.data(),
                      static_cast<GLsizei>(counts.size()));
  return 1;
}

unsigned GpuScene::drawFaces(std::uint32_t first, std::uint32_t count) const {
  glBindVertexArray(faces_);
  glDrawElements(GL_TRIANGLES, static_cast<GLsizei>(count), GL_UNSIGNED_INT,
                 at(first * sizeof(std::uint32_t)));
  return 1;
}

unsigned GpuScene::drawEdges(const Pieces& pieces) const {
  if (pieces.empty()) return 0;
  const std::vector<GLint> firsts(pieces.first.begin(), pieces.first.end());
  const std::vector<GLsizei> counts(pieces.count.begin(), pieces.count.end());
  glBindVertexArray(edges_);
  glMultiDrawArrays(GL_LINES, firsts.data(), counts.data(), static_cast<GLsizei>(firsts.size()));
  return 1;
}

}  // namespace viewer
