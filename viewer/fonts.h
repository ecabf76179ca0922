// The lettering of the sheet: one family, three cuts, in any script that the screen can be asked
// to show. Belongs to the Dear ImGui context that is current.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/problems.h"

struct ImFont;

namespace viewer {

struct Lettering {
  ImFont* text = nullptr;
  ImFont* bold = nullptr;
  ImFont* heading = nullptr;
  float unit = 1;  // pixels for one pixel of a plain screen: every size of the sheet counts in it
};

// Loads the lettering into the current context, before its first frame. `scale` is the display's;
// `samples` are texts that will be shown: their characters, and no others, are loaded beyond Latin,
// Greek and Cyrillic, from the typeface that has their script. Falls back to another family, and at
// last to Dear ImGui's own, never fails.
Lettering loadLettering(float scale, const std::vector<std::string>& samples = {});

// True when every character of the samples is in the lettering that is loaded.
bool letteringCovers(const std::vector<std::string>& samples);

// A warning that names the scripts of which characters are lacking, and the packages that have
// them; nothing when letteringCovers().
std::optional<model::Problem> lackingLetters(const std::vector<std::string>& samples);

// What was loaded last into the current context.
Lettering letteringNow();

}  // namespace viewer
