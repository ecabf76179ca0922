// The document of a GLB file: the tree of nodes, the materials, the animation and what they say.
#pragma once

#include <string>

#include "model/exchange/glb.h"
#include "model/exchange/glb_buffers.h"

namespace model {

// The whole document as JSON. Its one buffer is the file's binary chunk, laid out by layout();
// fills `buffers` on the way. Throws std::runtime_error when a coordinate or level is not finite or
// a text is not UTF-8.
//
//   root "job name"
//     "Stage 4 - Dig the trenches"          scale switched by the animation
//       "Wall A-B, outer leaf, lift 2"      the solid; extras: id, kind, levels, quantity ...
std::string glbDocument(const Model& model, const GlbOptions& options, GlbBuffers& buffers);

// Metres that are taken off every coordinate: the middle of the plan in whole metres, at the datum.
Vec3 glbOrigin(const SettingOut& settingOut);

}  // namespace model
