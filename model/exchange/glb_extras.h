// What the things in a GLB file say of themselves, for tools that show such data.
#pragma once

#include "model/exchange/glb_groups.h"
#include "model/exchange/glb_text.h"

namespace model {

// The stage that places a group ("stage", "stageNumber" from 1, 0 before work starts) and, when it
// goes again, the one that removes it ("removedIn", "removedInNumber").
GlbExtras stagesOf(const GlbGroup& group, const Programme& programme);

// Of a group's own node: those, and what its stage does.
GlbExtras extrasOf(const GlbGroup& group, const Programme& programme);
// Of a thing in a group; `stages` is stagesOf() the group.
GlbExtras extrasOf(const Element& element, const GlbExtras& stages);
// Of a string line in it.
GlbExtras extrasOf(const StringLine& line, const GlbExtras& stages);
// Of the whole: the stages with their moments in the animation.
GlbExtras extrasOf(const Programme& programme, const GlbClock& clock);

}  // namespace model
