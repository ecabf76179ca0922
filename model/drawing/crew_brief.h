// The crew's brief: an A4 page for each stage, to be pinned up and written on.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/drawing/sheet.h"
#include "model/model.h"

namespace model {

// A picture for each stage, in the programme's order; one without bytes, or past the end of the
// list, is none, and its room goes to the plan.
using StagePictures = std::vector<Jpeg>;

struct BookletOptions {
  std::optional<size_t> stage;  // of this stage alone, without contents; default: all
  std::string date;             // for the title block; empty: room to write it
};

// Contents first, when it is of all stages; then a page a stage: what is there before and after,
// order of work, levels to hit with boxes for what is read, lines, courses, quantities and where
// they go, tools, watch-outs, caution, hold point. What a page has no room for is left out by whole
// rows, with the command that tells it. The model must be of a job free of errors.
Drawing drawCrewBrief(const Model& model, const StagePictures& pictures,
                      const BookletOptions& options, const TextWidth& widthOf);

// Where a stage's picture goes, mm: pictures of its proportions fill it.
inline constexpr double kBriefPictureWidth = 108, kBriefPictureHeight = 68;

}  // namespace model
