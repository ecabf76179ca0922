// The tape: time laid out along the bottom of the sheet. Pure arithmetic, no drawing.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "viewer/overlays/box.h"

namespace viewer {

struct TapeStage {
  std::string name;
  double days = 1;
  double waitDays = 0;  // after the work, before the next stage may stand on it
  bool hold = false;
};

struct TapeName {
  size_t stage = 0;
  std::string text;  // perhaps shortened
  Box box;
};

struct TapeLayout {
  Box tape;
  std::vector<float> edges;     // n + 1: where stages begin, and the end
  std::vector<float> waitFrom;  // n: where the stage's wait begins; = its end when there is none
  std::vector<float> days;      // short graduations
  std::vector<TapeName> names;  // none overlaps another or leaves the tape

  // The programme's clock against the tape; both hold to its ends.
  float xAt(double time) const;
  double timeAt(float x) const;
  // The stage under x; nothing off the tape.
  std::optional<size_t> stageAt(float x) const;
};

using MeasureText = std::function<glm::vec2(const std::string&)>;

// Every stage gets an equal share of part of the tape and a share by its days of the rest, so that
// short ones can still be taken hold of. Names go in two rows under the graduations: `current` in
// the upper one, those before and after it in the lower one, shortened and moved aside where they
// must be; then the long stages where there is room left, each at its own place.
TapeLayout layOutTape(const std::vector<TapeStage>& stages, const Box& tape, size_t current,
                      const MeasureText& measure, float unit);

}  // namespace viewer
