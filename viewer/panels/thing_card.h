// What is said of the thing that has been clicked.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "viewer/card_place.h"
#include "viewer/frame.h"
#include "viewer/job_loader.h"
#include "viewer/overlays/sheet_layout.h"

struct ImDrawList;

namespace viewer {

enum class CardInk { Name, Plain, Quiet };
struct CardLine {
  std::string words;
  CardInk ink = CardInk::Plain;
};

// Its name, then a line each for kind and material, levels, size, quantity and stages; under each
// level and size, quieter, where that came from.
std::vector<CardLine> thingLines(const ReadyJob& job, std::size_t element);

// At the first free place that cardPlace finds; nothing when nothing is selected.
void drawThingCard(ImDrawList* list, const ReadyJob& job, const Frame& frame,
                   const SheetLayout& layout);

}  // namespace viewer
