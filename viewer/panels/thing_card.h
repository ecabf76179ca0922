// What is said of the thing that has been clicked.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "viewer/job_loader.h"
#include "viewer/overlays/sheet_layout.h"

struct ImDrawList;

namespace viewer {

// Its name, then a line each for kind and material, levels, size, quantity and stages.
std::vector<std::string> thingWords(const model::Model& model, std::size_t element);

// Beside the title block; nothing when nothing is selected.
void drawThingCard(ImDrawList* list, const ReadyJob& job, std::uint32_t selected,
                   const SheetLayout& layout);

}  // namespace viewer
