#include "viewer/overlays/draw_overlays.h"

#include <memory>

#include "viewer/overlays/overlay_sheet.h"

namespace viewer {
namespace {

void drawLabels(OverlaySheet& sheet) {
  const float u = sheet.pen.unit();
  LabelRules rules;
  rules.sheet = sheet.layout.sheet.grown(-6 * u);
  rules.over = sheet.over;
  rules.taken = sheet.taken;
  rules.lines = sheet.lines;
  rules.avoid = sheet.avoid;
  rules.gap = 4 * u;
  rules.near = 8 * u;
  rules.reach = 120 * u;
  const auto placed = layOutLabels(sheet.requests, rules);
  for (size_t i = 0; i < placed.size(); ++i) {
    if (!placed[i].shown) continue;
    const LabelText& text = sheet.texts[i];
    if (text.besideOnly && placed[i].leader) continue;
    const Box& box = placed[i].box;
    if (placed[i].leader && text.leader)
      sheet.pen.line(leaderStart(box, placed[i].anchor), placed[i].anchor, text.rgb, 1,
                     0.7f * text.opacity);
    // Edges of the ground and hatching run under words: a plate of paper keeps them off.
    sheet.pen.fill(box.grown(2 * u), ink::kPaper, 0.8f * text.opacity);
    sheet.pen.haloText({box.left, box.top}, text.rgb, text.text, text.cut, text.opacity);
  }
}

void takeFixedPlaces(OverlaySheet& sheet, const Overlays& overlays) {
  const float u = sheet.pen.unit();
  const SheetLayout& l = sheet.layout;
  if (overlays.tape)
    sheet.furniture.push_back({l.tape.left, l.tape.top - 42 * u, l.tape.right, l.tape.bottom});
  if (overlays.titleBlock) sheet.furniture.push_back(l.titleBlock);
  // The scale bar stands over the tape's place, also where that is empty.
  if (overlays.titleBlock && sheet.frame.camera.parallel)
    sheet.furniture.push_back(
        {l.tape.left, l.tape.top - 42 * u, l.tape.right, l.tape.top - 20 * u});
  if (overlays.clientWords) sheet.furniture.push_back(clientBox(l.sheet));
  sheet.taken = sheet.furniture;
  // The window's tabs and the sheet that stands in from them.
  if (sheet.options.viewIsButton)
    sheet.taken.push_back({0, 0, l.tabs.right + 8 * u + sheet.options.pulledOut, l.tape.top});
  if (sheet.levelsShown) sheet.taken.push_back(l.levels.grown(5 * u));
  if (sheet.levelsShown && l.levelPlan.left > 0) sheet.taken.push_back(l.levelsLeft.grown(5 * u));
  if (overlays.rod)
    sheet.taken.push_back({l.rod.left - 36 * u, l.rod.top, l.sheet.right, l.rod.bottom});
  if (const auto card = overlays.rod ? rodPointerCard(sheet) : std::nullopt)
    sheet.taken.push_back(*card);
  if (overlays.tape) sheet.over.push_back(l.tape);
  if (overlays.titleBlock) sheet.over.push_back(l.titleBlock);
  if (overlays.rod) sheet.over.push_back(l.rod);
  if (sheet.options.pulledOut > 0)
    sheet.over.push_back({0, 0, l.tabs.right + sheet.options.pulledOut, l.tape.top});
}

// What nobody has worked out beforehand.
struct Worked {
  std::unique_ptr<Picker> picker;
  std::optional<model::SetOutLines> setOut;
  std::optional<model::AsBuilt> asBuilt;
  std::optional<JobFacts> facts;

  OverlayOptions complete(const model::Model& model, const Scene& scene, const Overlays& overlays,
                          OverlayOptions with) {
    // What is hidden should be quiet in pictures too.
    if (!with.picker && asksForPicker(overlays)) {
      picker = std::make_unique<Picker>(scene);
      with.picker = picker.get();
    }
    if (!with.setOut && overlays.settingOut)
      with.setOut = &setOut.emplace(model::deriveLines(model.job, model.settingOut));
    const bool asksForFacts = overlays.levels || overlays.lines || overlays.dimensions ||
                              overlays.captions || overlays.readings || overlays.gaugeRods;
    if (!with.asBuilt && asksForFacts)
      with.asBuilt = &asBuilt.emplace(model::deriveAsBuilt(model.job, model.settingOut));
    if (!with.facts && asksForFacts)
      with.facts = &facts.emplace(deriveJobFacts(model, *with.asBuilt));
    return with;
  }

 private:
  static bool asksForPicker(const Overlays& overlays) {
    return overlays.lines || overlays.corners || overlays.dimensions || overlays.settingOut ||
           overlays.instrument || overlays.readings || overlays.gaugeRods;
  }
};

}  // namespace

void drawOverlays(const model::Model& model, const Scene& scene, const Frame& frame,
                  const Overlays& overlays, int width, int height, const OverlayOptions& options) {
  Worked own;
  const OverlayOptions with = own.complete(model, scene, overlays, options);
  Pen pen(options.list ? options.list : ImGui::GetBackgroundDrawList(), options.record);
  std::optional<size_t> wordsOf;
  if (options.roomByStage) wordsOf = size_t(std::max(frame.stage, 0));
  const SheetLayout layout =
      sheetOf(model, overlays, float(width), float(height), pen.unit(), options.pulledOut, wordsOf);
  const bool levels = overlays.levels && !layout.levelsGiveWay;
  OverlaySheet sheet{model, scene, frame, with, pen, layout, levels, overlays.rod,
                     {},    {},    {},    {},   {},  {},     {}};
  takeFixedPlaces(sheet, overlays);
  // Captions first: they tell how much room they took. But they lie over what is drawn after them.
  pen.list()->ChannelsSplit(2);
  pen.list()->ChannelsSetCurrent(1);
  if (overlays.captions) drawCaptions(sheet);
  pen.list()->ChannelsSetCurrent(0);
  if (overlays.lines || overlays.dimensions || overlays.settingOut)
    sheet.avoid = standingBuildings(sheet);
  if (overlays.lines || overlays.clientWords) drawStringLines(sheet, overlays.lines);
  if (overlays.lines) drawCourseLines(sheet);
  std::vector<CornerRing> rings;
  if (overlays.corners) rings = placeCornerLetters(sheet);
  if (overlays.dimensions) drawDimensions(sheet, rings);
  if (overlays.settingOut) drawSettingOut(sheet, *with.setOut);
  if (overlays.instrument) drawInstruments(sheet);
  if (overlays.readings) drawReadings(sheet, *with.asBuilt);
  if (overlays.gaugeRods) drawGaugeRods(sheet, with.facts->rods);
  if (overlays.cutUnits) drawCutUnits(sheet);
  drawCornerLetters(sheet, rings);  // over the ends of dimension lines
  if (levels) drawLevelMarks(sheet);
  drawLabels(sheet);
  pen.list()->ChannelsMerge();
  if (overlays.titleBlock) drawScaleBar(sheet);
  if (overlays.rod) drawRod(sheet);
  if (overlays.titleBlock) drawTitleBlock(sheet);
  if (overlays.tape) drawTape(sheet);
  if (overlays.clientWords) drawClientWords(sheet);
}

}  // namespace viewer
