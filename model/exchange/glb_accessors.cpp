#include "model/exchange/glb_accessors.h"

#include <algorithm>

#include "model/exchange/glb_text.h"

namespace model {

namespace {

void appendMember(std::string& out, std::string_view key, size_t number) {
  out += key;
  appendNumber(out, number);
}

}  // namespace

size_t GlbAccessors::numberOf(GlbView view) {
  const auto found = std::find(views_.begin(), views_.end(), view);
  if (found != views_.end()) return size_t(found - views_.begin());
  views_.push_back(view);
  return views_.size() - 1;
}

void GlbAccessors::add(GlbView view, size_t first, size_t count, bool vectors,
                       std::span<const float> low, std::span<const float> high) {
  if (!rows_.empty()) rows_ += ',';
  appendMember(rows_, "{\"bufferView\":", numberOf(view));
  appendMember(rows_, ",\"byteOffset\":", first * elementSize(view));
  appendMember(rows_, ",\"componentType\":", size_t(componentType(view)));
  appendMember(rows_, ",\"count\":", count);
  if (!low.empty()) {
    rows_ += ",\"min\":";
    appendList(rows_, low);
    rows_ += ",\"max\":";
    appendList(rows_, high);
  }
  rows_ += vectors ? ",\"type\":\"VEC3\"}" : ",\"type\":\"SCALAR\"}";
}

size_t accessorsOf(const Element& element) { return hasArea(element.solid) ? 3 : 0; }

void packShapes(const Works& works, const std::vector<GlbGroup>& groups, GlbBuffers& buffers,
                GlbAccessors& accessors) {
  size_t triangles = 0;
  for (const Element& element : works.elements) triangles += element.solid.triangles.size();
  buffers.reserve(triangles);
  const auto addPositions = [&](const GlbPart& part) {
    accessors.add(GlbView::Positions, part.firstVertex, part.vertexCount, true, part.low,
                  part.high);
  };
  for (const GlbGroup& group : groups) {
    for (const size_t index : group.elements) {
      const GlbPart part = buffers.add(works.elements[index].solid);
      if (part.indexCount == 0) continue;
      addPositions(part);
      accessors.add(GlbView::Normals, part.firstNormal, part.vertexCount, true);
      accessors.add(part.wide ? GlbView::Indices32 : GlbView::Indices16, part.firstIndex,
                    part.indexCount, false);
    }
    for (const size_t index : group.strings) {
      addPositions(buffers.addLine(works.strings[index].a, works.strings[index].b));
    }
  }
}

}  // namespace model
