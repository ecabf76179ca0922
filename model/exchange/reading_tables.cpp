#include "model/exchange/reading_tables.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "model/asbuilt/words.h"
#include "model/decimal_text.h"

namespace model {

namespace {

struct Column {
  const char* heading;
  bool numeric = false, detail = false;
};

ReadingPart partWith(const char* key, std::string title, const std::vector<Column>& columns) {
  ReadingPart part;
  part.key = key;
  part.table.title = std::move(title);
  for (const Column& column : columns) {
    part.table.columns.emplace_back(column.heading);
    part.table.numeric.push_back(column.numeric);
    part.table.detail.push_back(column.detail);
  }
  return part;
}

// Millimetres as a bare number, to a tenth.
std::string bare(double metres) {
  const std::string text = millimetres(metres);
  return text == "-0" ? "0" : text;
}

ReadingPart deviationsPart(const Job& job, const AsBuilt& built) {
  constexpr bool kNumber = true, kDetail = true;
  ReadingPart part = partWith("deviations", "Readings of " + job.name + " against the drawing",
                              {{"mark"},
                               {"what"},
                               {"drawn", kNumber},
                               {"read", kNumber},
                               {"unit"},
                               {"off"},
                               {"off mm", kNumber, kDetail},
                               {"over mm", kNumber, kDetail},
                               {"under mm", kNumber, kDetail},
                               {"allowed by", false, kDetail},
                               {"set"},
                               {"date", false, kDetail},
                               {"counts"},
                               {"note"},
                               {"photo"}});
  std::map<std::string, std::string> byLimit;  // source to what it allows for
  for (const Deviation& d : built.deviations) {
    const ReadingSet& set = job.readings[d.set];
    const Reading& reading = set.rows[d.row];
    const bool level = d.kind == ReadingKind::Level, corner = d.kind == ReadingKind::Corner;
    const auto text = [&](double value) {
      return corner ? "" : level ? levelText(value) : bare(value);
    };
    part.table.rows.push_back(
        {markOf(d), d.what, text(d.design), text(d.read), level ? "m" : "mm", d.words, bare(d.off),
         bare(d.allowed.over), bare(d.allowed.under), d.allowed.source, set.name, set.date,
         d.latest ? "" : "no: read again later", reading.note, reading.photo});
    const std::string of = d.what.substr(0, d.what.find(','));
    std::string& list = byLimit[d.allowed.source];
    const std::string name = d.kind == ReadingKind::Side       ? "sides"
                             : d.kind == ReadingKind::Diagonal ? "diagonals"
                             : corner                          ? "corners"
                                                               : of;
    if ((", " + list + ",").find(", " + name + ",") == std::string::npos)
      list += (list.empty() ? "" : ", ") + name;
  }
  for (const Unheld& unheld : built.unheld) {
    const ReadingSet& set = job.readings[unheld.set];
    part.words.push_back(set.file + ", line " + std::to_string(set.rows[unheld.row].place.line) +
                         " is held against nothing: " + unheld.why);
  }
  for (const auto& [source, list] : byLimit)
    part.words.push_back("Allowed by " + source + ": " + list);
  return part;
}

ReadingPart changesPart(const Job& job, const AsBuilt& built) {
  ReadingPart part = partWith("changes", "What the readings of " + job.name + " change",
                              {{"what"}, {"where"}, {"words"}});
  for (const Change& change : built.changes)
    part.table.rows.push_back({nameOf(change.of), change.where, change.words});
  part.words.push_back(
      "These are answers in common use; the designer decides where they touch what is drawn");
  return part;
}

ReadingPart bedsPart(const Job& job, const AsBuilt& built) {
  ReadingPart part =
      partWith("beds", "First beds of " + job.name + ", from concrete as built to damp course",
               {{"where"},
                {"concrete m", true},
                {"height mm", true, true},
                {"courses", true, true},
                {"first bed mm", true},
                {"slip or cut course mm", true, true},
                {"courses below ground", true, true},
                {"their joint mm", true, true},
                {"joint within", false, true},
                {"words"}});
  for (const FirstBed& bed : built.beds) {
    const Deviation& d = built.deviations[bed.deviation];
    const bool shared = bed.regauge.courses > 0;
    part.table.rows.push_back(
        {d.place.words, levelText(d.read), bare(bed.height), std::to_string(bed.courses),
         bare(bed.bed), bed.unit > 0 ? bare(bed.unit) : "", std::to_string(bed.regauge.courses),
         shared ? bare(bed.regauge.joint) : "",
         !shared              ? ""
         : bed.regauge.within ? "yes"
                              : "no",
         bed.words});
  }
  part.words.push_back(
      "A first bed of 7 to 15 is normal and of 25 the thickest; joints shared below ground are 8 "
      "to "
      "12: common practice, no source");
  return part;
}

ReadingPart wallsPart(const Job& job, const SettingOut& out, const AsBuilt& built) {
  ReadingPart part = partWith("walls", "Walls of " + job.name + " as built",
                              {{"wall"},
                               {"what"},
                               {"drawn mm", true},
                               {"least mm", true},
                               {"at mm along", true},
                               {"most mm", true},
                               {"at mm", true},
                               {"words"}});
  auto& rows = part.table.rows;
  for (const FaceAsBuilt& f : built.faces)
    rows.push_back({out.walls[f.wall].name, "straight", "0", "", "", bare(f.bow),
                    f.bow == 0 ? "" : bare(f.bowAt), f.words});
  for (const SpanAsBuilt& span : built.spans)
    rows.push_back({out.walls[span.wall].name, "width inside", "0", bare(span.least), "",
                    bare(span.most), "", span.words});
  for (const CavityAsBuilt& c : built.cavities) {
    rows.push_back({out.walls[c.wall].name, "cavity", bare(c.drawn), bare(c.least.width),
                    bare(c.least.s), bare(c.most.width), bare(c.most.s), c.words});
  }
  for (const BearingAsBuilt& b : built.bearings) {
    const WallLine& wall = out.walls[b.wall];
    if (b.leafRead)
      rows.push_back({wall.name, "inner leaf", bare(b.leafDrawn), bare(b.leastLeaf.width),
                      bare(b.leastLeaf.s), "", "", b.words});
    if (wall.eaves == EavesKind::Hip)
      rows.push_back({wall.name, "under the plate", bare(b.plateDrawn), bare(b.leastPlate.width),
                      bare(b.leastPlate.s), "", "", b.leafRead ? "" : b.words});
  }
  for (const CornerAsBuilt& c : built.corners) {
    const std::string words = c.words.empty() ? "as drawn" : c.words;
    rows.push_back({out.walls[c.corner].name, "out of square", "0", bare(c.over), "", "", "",
                    words + (c.byTape ? " (by tape)" : " (by position)")});
  }
  part.words.push_back("Distances along a wall run anticlockwise, from the corner named in words");
  return part;
}

ReadingPart raftersPart(const Job& job, const SettingOut& out, const AsBuilt& built) {
  constexpr bool kNumber = true, kDetail = true;
  ReadingPart part = partWith("rafters", "Rafters of " + job.name + " over the plates as measured",
                              {{"rafter"},
                               {"from corner"},
                               {"at mm", kNumber},
                               {"drawn mm", kNumber},
                               {"run mm", kNumber, kDetail},
                               {"plate"},
                               {"plate out mm", kNumber, kDetail},
                               {"plate up mm", kNumber, kDetail},
                               {"ridge held"},
                               {"ridge held mm", kNumber, kDetail},
                               {"pitch then deg", kNumber, kDetail},
                               {"pitch held"},
                               {"pitch held mm", kNumber, kDetail},
                               {"its top then"},
                               {"top up mm", kNumber, kDetail},
                               {"note"}});
  for (const RafterChange& r : built.roof.rafters) {
    const WallLine& wall = out.walls[r.wall];
    const std::string number = r.id.substr(r.id.find_last_of('/') + 1);
    part.table.rows.push_back(
        {wall.name + " " + number, out.corners[wall.from].letter, lengthText(r.s),
         lengthText(r.length), bare(r.run), plateText(r), bare(r.out), bare(r.up),
         longerText(r.ridgeHeld), bare(r.ridgeHeld), decimalText(r.pitchThen, 2),
         longerText(r.pitchHeld), bare(r.pitchHeld), offText(ReadingKind::Level, r.topUp),
         bare(r.topUp), r.beyond ? "past the readings: the nearest is held" : ""});
  }
  part.words = {
      "Ridge held: ridges, hips and valleys stay as drawn and the pitch gives way",
      "Pitch held: every slope keeps its pitch on its own plate, and ridges, hips and valleys move",
      "Lengths run from the plate's outer edge to the line at the top; say which of the two "
      "answers "
      "is built before the first is cut"};
  return part;
}

}  // namespace

std::vector<ReadingPart> readingParts(const Job& job, const SettingOut& settingOut,
                                      const AsBuilt& built) {
  std::vector<ReadingPart> parts{deviationsPart(job, built), changesPart(job, built),
                                 bedsPart(job, built), wallsPart(job, settingOut, built),
                                 raftersPart(job, settingOut, built)};
  const char* none[] = {"No reading is held against the drawing",
                        "Nothing: what was read changes nothing above",
                        "No top of concrete was read",
                        "No faces or corners were read that tell a wall's width or angle",
                        "No plate was read: its level, or the inner leaf's faces"};
  for (size_t i = 0; i < parts.size(); ++i) {
    if (!parts[i].table.rows.empty()) continue;
    if (i > 0) parts[i].words.clear();
    parts[i].words.insert(parts[i].words.begin(), none[i]);
  }
  return parts;
}

const std::vector<std::string>& readingPartKeys() {
  static const std::vector<std::string> keys{"deviations", "changes", "beds", "walls", "rafters"};
  return keys;
}

}  // namespace model
