// Changes what a job file says of one stage or delivery, keeping everything else of its text.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "model/model.h"

namespace viewer {

// A change that has been saved, and how it is taken back.
struct SavedChange {
  std::string before, after;  // the whole text
};

struct ChangedStage {
  std::optional<SavedChange> saved;
  std::string problem;  // in one line, when nothing was saved
};

// Reads the file as it is now, changes the entry for the stage (or makes one) and saves it in one
// step. Nothing is written when the file cannot be read or has errors, or when the programme cannot
// have what is asked: the problem is then the physical reason. `model` is what the file said last.
ChangedStage changeStage(const std::string& path, const model::Model& model, size_t stage,
                         const std::function<void(model::StageOverride&)>& set);

// The same of a delivery, by its place in ProgrammeInput::deliveries: how many working days before
// its stage it comes. Refused when the file has another delivery there by now.
ChangedStage changeDelivery(const std::string& path, const model::Model& model, size_t delivery,
                            double daysBefore);

// Puts the text back as it was before the change; the problem when the file has been changed since
// or cannot be written.
std::optional<std::string> takeBackChange(const std::string& path, const SavedChange& change);

}  // namespace viewer
