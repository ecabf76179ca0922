#include "model/lines/set_out_lines.h"

namespace model {

SetOutLines deriveLines(const Job& job, const SettingOut& settingOut) {
  SetOutLines lines;
  lines.boards = deriveBoards(job, settingOut);
  lines.lines = deriveWallRuns(job, settingOut);
  lines.parallels = deriveParallels(settingOut);
  lines.tape = deriveTapeChecks(job, settingOut);
  lines.limits = deriveLimits(job, settingOut);
  lines.pegs = derivePegs(job, settingOut, lines.boards);
  return lines;
}

}  // namespace model
