// Paper and ink for the few widgets that the sheets use.
#pragma once

namespace viewer {

// Sets the style of the current Dear ImGui context; `unit` as in Lettering.
void setPaperStyle(float unit);

}  // namespace viewer
