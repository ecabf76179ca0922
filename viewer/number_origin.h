// Where a number on the card of a thing came from.
#pragma once

#include <string>

#include "model/job/read_job.h"
#include "model/model.h"

namespace viewer {

enum class Figure { Top, Underside, Size };

// "foundations.top, line 87" for a number that the job file gives; "foundations.width 600, by
// default" for one that it leaves out; "worked out" for one that follows from others. Empty for a
// size that no key of the file is alone responsible for.
std::string originWords(const model::Model& model, const model::KeyPlaces& places,
                        const model::Element& element, Figure figure);

}  // namespace viewer
