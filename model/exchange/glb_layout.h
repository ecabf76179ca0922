// Where the arrays of a GLB file lie in its binary chunk.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/exchange/glb_buffers.h"

namespace model {

enum class GlbView { Positions, Normals, Indices16, Indices32, Animation };

// Bytes of one item as accessors count them: a vertex, an index, a number.
size_t elementSize(GlbView view);
// glTF's codes for the number type of a view and for what it is bound to (0: nothing).
int componentType(GlbView view);
int target(GlbView view);

struct GlbSpan {
  GlbView view;
  size_t offset, size;     // bytes; offsets are multiples of 4
  std::string_view bytes;  // points into the buffers
};

// The arrays that hold something, in file order.
std::vector<GlbSpan> layout(const GlbBuffers& buffers);
// Of the whole chunk, a multiple of 4.
size_t chunkSize(const std::vector<GlbSpan>& spans);
// The members "buffers" and "bufferViews" of the document, appended with commas at the end; nothing
// for an empty chunk. The views are numbered in the order given.
void appendBuffer(std::string& out, const std::vector<GlbSpan>& spans,
                  const std::vector<GlbView>& views);

}  // namespace model
