#include "model/exchange/glb_layout.h"

#include <algorithm>
#include <bit>

namespace model {

// The arrays are written as they lie in memory, and glTF is little-endian.
static_assert(std::endian::native == std::endian::little);

namespace {

constexpr int kUnsignedShort = 5123, kUnsignedInt = 5125, kFloat = 5126;
constexpr int kArrayBuffer = 34962, kElementArrayBuffer = 34963;

template <typename T>
std::string_view bytesOf(const std::vector<T>& values) {
  return {reinterpret_cast<const char*>(values.data()), values.size() * sizeof(T)};
}

size_t padded(size_t size) { return (size + 3) / 4 * 4; }

}  // namespace

size_t elementSize(GlbView view) {
  switch (view) {
    case GlbView::Positions:
    case GlbView::Normals:
      return 3 * sizeof(float);
    case GlbView::Indices16:
      return sizeof(std::uint16_t);
    case GlbView::Indices32:
      return sizeof(std::uint32_t);
    case GlbView::Animation:
      return sizeof(float);
  }
  return 0;
}

int componentType(GlbView view) {
  if (view == GlbView::Indices16) return kUnsignedShort;
  if (view == GlbView::Indices32) return kUnsignedInt;
  return kFloat;
}

int target(GlbView view) {
  if (view == GlbView::Animation) return 0;
  const bool indices = view == GlbView::Indices16 || view == GlbView::Indices32;
  return indices ? kElementArrayBuffer : kArrayBuffer;
}

std::vector<GlbSpan> layout(const GlbBuffers& buffers) {
  std::vector<GlbSpan> spans;
  size_t offset = 0;
  const auto add = [&](GlbView view, std::string_view bytes) {
    if (bytes.empty()) return;
    spans.push_back({view, offset, bytes.size(), bytes});
    offset += padded(bytes.size());
  };
  add(GlbView::Positions, bytesOf(buffers.positions));
  add(GlbView::Normals, bytesOf(buffers.normals));
  add(GlbView::Indices16, bytesOf(buffers.indices16));
  add(GlbView::Indices32, bytesOf(buffers.indices32));
  add(GlbView::Animation, bytesOf(buffers.animation));
  return spans;
}

size_t chunkSize(const std::vector<GlbSpan>& spans) {
  return spans.empty() ? 0 : padded(spans.back().offset + spans.back().size);
}

void appendBuffer(std::string& out, const std::vector<GlbSpan>& spans,
                  const std::vector<GlbView>& views) {
  if (spans.empty()) return;
  out += "\"buffers\":[{\"byteLength\":" + std::to_string(chunkSize(spans)) + "}],";
  out += "\"bufferViews\":[";
  for (const GlbView view : views) {
    const auto span = std::find_if(spans.begin(), spans.end(),
                                   [view](const GlbSpan& one) { return one.view == view; });
    out += "{\"buffer\":0,\"byteOffset\":" + std::to_string(span->offset);
    out += ",\"byteLength\":" + std::to_string(span->size);
    // Vertices are vectors; indices and the animation's numbers lie without steps.
    if (target(view) == kArrayBuffer) {
      out += ",\"byteStride\":" + std::to_string(elementSize(view));
    }
    if (target(view) != 0) out += ",\"target\":" + std::to_string(target(view));
    out += "},";
  }
  out.back() = ']';
  out += ',';
}

}  // namespace model
