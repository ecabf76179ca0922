// The document of a GLB file: the tree of nodes, the materials, the animation and what they say.
#pragma once

#include "model/exchange/glb.h"
#include "model/exchange/glb_buffers.h"

// The document library's type; named here so that its header stays inside the sources.
namespace tinygltf {
class Model;
}

namespace model {

// The whole document but for its one buffer, which glb.cpp writes itself: the buffer views point
// into buffer 0 in the order of `layout`. Fills `buffers` on the way. Throws std::runtime_error
// when a coordinate or level is not finite or a text is not UTF-8.
//
//   root "job name"
//     "Stage 4 - Dig the trenches"          scale switched by the animation
//       "Wall A-B, outer leaf, lift 2"      the solid; extras: id, kind, levels, quantity ...
tinygltf::Model glbDocument(const Model& model, const GlbOptions& options, GlbBuffers& buffers);

// Metres that are taken off every coordinate: the middle of the plan in whole metres, at the datum.
Vec3 glbOrigin(const SettingOut& settingOut);

}  // namespace model
