// Each stage as its client is told of it: no word of the trade without what it means. Common
// practice, no source.
#pragma once

#include <string>

#include "model/model.h"

namespace model {

struct ClientStage {
  std::string title;   // "The walls of the ground floor, step 2 of 3"
  std::string what;    // what happens
  std::string notice;  // what is usually noticed; the job's own words go before it
  std::string atEnd;   // what is to be seen afterwards
};

// The job's own stages have their name, and words that hold for any.
ClientStage clientStage(const Model& model, size_t stage);

}  // namespace model
