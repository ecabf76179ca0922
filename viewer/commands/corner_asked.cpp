#include "viewer/commands/corner_asked.h"

namespace viewer {

CornerAsked cornerAsked(const model::SettingOut& settingOut, std::string name) {
  const std::string asked = name;
  for (char& c : name)
    if (c >= 'a' && c <= 'z') c = char(c - 'a' + 'A');
  CornerAsked found{settingOut.cornerNamed(name), name, ""};
  if (found.corner) return found;
  std::string letters;
  for (const model::Corner& corner : settingOut.corners)
    letters += (letters.empty() ? "" : ", ") + corner.letter;
  found.wrong = "there is no corner \"" + asked + "\" in this job: " + letters;
  return found;
}

}  // namespace viewer
