// The client's booklet: a page for each stage in plain words.
#pragma once

#include "model/drawing/crew_brief.h"

namespace model {

// Contents with dates, and what the client is to decide by when; then a page a stage: picture,
// dates, what happens, what will be noticed, what is to be seen at its end, and the decision that
// is wanted by its start. No hold points and no figures of the trade.
Drawing drawClientBooklet(const Model& model, const StagePictures& pictures,
                          const BookletOptions& options, const TextWidth& widthOf);

// Where a stage's picture goes, mm: pictures of its proportions fill it.
inline constexpr double kClientPictureWidth = 172, kClientPictureHeight = 108;

}  // namespace model
