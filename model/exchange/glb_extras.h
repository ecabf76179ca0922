// What the things in a GLB file say of themselves, for tools that show such data.
#pragma once

#include <tiny_gltf.h>

#include <string>

#include "model/exchange/glb_groups.h"

namespace model {

// Flat, never empty, numbers and texts only: what readers of glTF can be trusted with.
using Extras = tinygltf::Value::Object;

// The text itself. Throws std::runtime_error when it is not UTF-8.
const std::string& checked(const std::string& text);

// Nothing is written for an empty text: readers trip over empty values.
void say(Extras& extras, const char* key, const std::string& text);
// To a tenth of a millimetre: what is written is a figure for people, not the geometry. Throws
// std::runtime_error when it is not finite.
void say(Extras& extras, const char* key, double number);
void say(Extras& extras, const char* key, int number);

// The stage that places a group ("stage", "stageNumber" from 1, 0 before work starts) and, when it
// goes again, the one that removes it ("removedIn", "removedInNumber").
void sayStages(Extras& extras, const GlbGroup& group, const Programme& programme);

Extras extrasOf(const Element& element, const GlbGroup& group, const Programme& programme);
Extras extrasOf(const GlbGroup& group, const Programme& programme);

}  // namespace model
