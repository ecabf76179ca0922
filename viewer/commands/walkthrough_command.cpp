#include "viewer/commands/walkthrough_command.h"

#include <algorithm>
#include <filesystem>
#include <functional>
#include <iostream>
#include <optional>
#include <vector>

#include "model/drawing/designer_report.h"
#include "model/exchange/drawing_pdf.h"
#include "model/exchange/glb.h"
#include "model/exchange/lettering.h"
#include "model/exchange/reading_tables.h"
#include "model/exchange/report_table.h"
#include "model/exchange/tables.h"
#include "viewer/commands/booklet_pictures.h"
#include "viewer/commands/contents_list.h"
#include "viewer/commands/designer_command.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/no_open_gl.h"
#include "viewer/commands/output.h"
#include "viewer/commands/picture_options.h"
#include "viewer/commands/progress.h"
#include "viewer/commands/reading_sets.h"
#include "viewer/commands/stage_overlays.h"
#include "viewer/commands/stages_asked.h"

namespace viewer {
namespace {

// One file to write: what it is called, what it shows, and how it is made.
struct Piece {
  std::string name, what;
  std::function<int(const std::string& path)> save;
};

Piece tablePiece(std::string name, std::string what, model::Table table) {
  return {std::move(name), std::move(what), [table = std::move(table)](const std::string& path) {
            return saveOut(path, model::write(table, model::TableStyle::Csv));
          }};
}

std::vector<Piece> tablePieces(const model::Model& model) {
  return {tablePiece("levels.csv", "the schedule of levels", model::levelsTable(model)),
          tablePiece("takeoff.csv", "the quantities", model::takeoffTable(model, false)),
          tablePiece("takeoff-by-stage.csv", "the quantities by stage",
                     model::takeoffTable(model, true)),
          tablePiece("stages.csv", "the programme", model::stagesTable(model))};
}

// Of a job with readings or questions.
std::vector<Piece> reportPieces(const model::Model& model) {
  const model::Job& job = model.job;
  if (job.readings.empty() && job.questions.empty()) return {};
  const model::AsBuilt built = model::deriveAsBuilt(job, model.settingOut);
  std::vector<Piece> pieces;
  if (!job.readings.empty())
    pieces.push_back(tablePiece("readings.csv", "the readings against the drawing",
                                model::readingParts(job, model.settingOut, built).front().table));
  pieces.push_back(tablePiece("report.csv", "the report to the designer, as a table",
                              model::reportTable(job, built)));
  pieces.push_back(
      {"report.pdf", "the report to the designer", [&model, built](const std::string& path) {
         return saveOut(path, model::pdfBytes(model::drawDesignerReport(
                                  model.job, model.settingOut, built, {}, model::textWidth())));
       }});
  return pieces;
}

std::vector<Piece> designerPieces(const LoadedJob& loaded) {
  return {
      {"designer-sheet.csv", "levels, dimensions and questions for the designer, as a table",
       [&loaded](const std::string& path) { return saveOut(path, designerFiles(loaded, "").csv); }},
      {"designer-sheet.pdf", "levels, dimensions and questions for the designer",
       [&loaded](const std::string& path) {
         return saveOut(path, designerFiles(loaded, "").pdf);
       }}};
}

// A file of the job's own that a piece would be written over.
std::optional<std::string> inTheWay(const std::vector<Piece>& pieces, const LoadedJob& loaded,
                                    const std::filesystem::path& folder) {
  for (const Piece& piece : pieces)
    if (holdsReadings(loaded, (folder / piece.name).string())) return piece.name;
  return std::nullopt;
}

Piece glbPiece(const model::Model& model, const std::string& job) {
  const std::string stem = std::filesystem::path(job).stem().string();
  return {(stem.empty() ? "model" : stem) + ".glb", "the building, stage by stage, to share",
          [&model](const std::string& path) {
            const auto problem = model::writeGlb(model, path);
            if (problem) std::cerr << model::format(*problem) << "\n";
            return problem ? kProblems : kWell;
          }};
}

std::vector<Piece> picturePieces(const model::Model& model, Picturer& picturer,
                                 const PictureOptions& base, bool ownOverlays) {
  std::vector<Piece> pieces;
  for (size_t i = 0; i < model.programme.stages.size(); ++i) {
    PictureOptions picture = base;
    picture.time = static_cast<double>(i) + 1;
    if (!ownOverlays) picture.overlays = overlaysOf(model.programme.stages[i].key);
    pieces.push_back({stagePictureName(model.programme, i), model.programme.stages[i].name,
                      [&picturer, picture, i](const std::string& path) mutable {
                        if (picture.view == kStageView) picture.own = picturer.viewOf(i);
                        return saveOut(path, pngBytes(picturer.picture(picture)));
                      }});
  }
  return pieces;
}

// The booklets; without pictures when there is nothing to draw with. They take no larger pictures
// than the walkthrough has.
std::vector<Piece> bookletPieces(const model::Model& model, Picturer* picturer, int widest) {
  const auto save = [&model, picturer, widest](BookletFor reader, const std::string& path) {
    model::StagePictures pictures;
    if (picturer) {
      auto made = bookletPictures(
          model, *picturer, reader, std::nullopt, [](size_t) { return !StopOnRequest::asked(); },
          widest);
      if (!made) return int(kStopped);
      pictures = std::move(*made);
    }
    return saveOut(path, bookletPdf(model, reader, pictures, {}));
  };
  return {{"crew-brief.pdf", "the crew's brief, a page for each stage",
           [save](const std::string& path) { return save(BookletFor::Crew, path); }},
          {"client-booklet.pdf", "the client's booklet, a page for each stage",
           [save](const std::string& path) { return save(BookletFor::Client, path); }}};
}

// Takes away what an earlier walkthrough wrote there, and writes.
int writePieces(const std::vector<Piece>& pieces, const std::filesystem::path& folder) {
  ContentsList list(folder);
  const std::string listed = (folder / ContentsList::kName).string();
  if (list.foreign()) {
    std::cerr << listed << ": a walkthrough keeps its own list under this name, and this file is "
              << "none; move it, or choose another folder\n";
    return kProblems;
  }
  for (const std::string& kept : list.clear()) {
    if (std::any_of(pieces.begin(), pieces.end(), [&](const Piece& p) { return p.name == kept; }))
      continue;  // written afresh
    std::cerr << (folder / kept).string()
              << ": of an earlier walkthrough, but changed since, so it was left there\n";
  }
  std::string written;
  int result = kWell;
  {
    Progress progress(pieces.size());
    const StopOnRequest stop;
    for (const Piece& piece : pieces) {
      if (StopOnRequest::asked()) result = kStopped;
      if (result != kWell) break;
      progress.step(piece.what);
      const std::string path = (folder / piece.name).string();
      result = piece.save(path);
      if (result == kWell) result = list.note(piece.name);
      if (result == kWell) written += path + "  " + piece.what + "\n";
    }
    if (result == kWell && StopOnRequest::asked()) result = kStopped;
  }
  if (result == kStopped) std::cerr << "Stopped. What was written until then is whole.\n";
  if (!written.empty()) written += listed + "  the list of these, for the next walkthrough\n";
  const int printed = printOut(written);
  return result == kWell ? printed : result;
}

}  // namespace

int runWalkthrough(const WalkthroughCommand& command) {
  PictureOptions base;
  const bool own = !command.show.empty();  // else each stage has what it needs
  if (auto wrong = readSize(command.size, base)) return wrongUsage(*wrong);
  if (auto wrong = readOverlays(command.show, base.overlays)) return wrongUsage(*wrong);
  if (!command.view.empty()) {
    if (auto wrong = readView(command.view, base)) return wrongUsage(*wrong);
  }
  const LoadedJob loaded = loadJob(command.job);
  printProblems(loaded.problems);
  if (!loaded.model) return kProblems;
  const model::Model& model = *loaded.model;
  if (command.view.empty()) base.view = kStageView;
  std::vector<Piece> pieces = tablePieces(model);
  for (Piece& piece : reportPieces(model)) pieces.push_back(std::move(piece));
  for (Piece& piece : designerPieces(loaded)) pieces.push_back(std::move(piece));
  if (const auto name = inTheWay(pieces, loaded, command.out)) {
    std::cerr << (std::filesystem::path(command.out) / *name).string()
              << ": holds readings of this job; choose another folder\n";
    return kProblems;
  }
  std::error_code error;
  std::filesystem::create_directories(command.out, error);
  if (error) {
    std::cerr << command.out << ": the folder cannot be made: " << error.message() << "\n";
    return kProblems;
  }
  pieces.push_back(glbPiece(model, command.job));
  std::string why;
  const auto offscreen = Offscreen::create(why);
  if (!offscreen) {  // what needs no drawing is written all the same
    for (Piece& piece : bookletPieces(model, nullptr, base.width))
      pieces.push_back(std::move(piece));
    const int result = writePieces(pieces, command.out);
    return result == kWell ? noOpenGl(why) : result;
  }
  Picturer picturer(model, *offscreen);
  for (Piece& piece : picturePieces(model, picturer, base, own)) pieces.push_back(std::move(piece));
  for (Piece& piece : bookletPieces(model, &picturer, base.width))
    pieces.push_back(std::move(piece));
  const int result = writePieces(pieces, command.out);
  printAbout(command.job, picturer.lackingLetters());
  return result;
}

}  // namespace viewer
