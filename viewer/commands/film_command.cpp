#include "viewer/commands/film_command.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <filesystem>
#include <iostream>
#include <optional>

#include "viewer/commands/load_job.h"
#include "viewer/commands/no_open_gl.h"
#include "viewer/commands/output.h"
#include "viewer/commands/picture_options.h"
#include "viewer/commands/progress.h"
#include "viewer/film/film_camera.h"
#include "viewer/film/film_out.h"
#include "viewer/film/film_pace.h"

namespace viewer {
namespace {

constexpr double kLongest = 3600;        // seconds of film
constexpr double kLeastForAStage = 0.4;  // seconds, when it is told by days

// Stages of the programme, both among them.
struct Range {
  size_t first = 0, last = 0;
};

std::optional<std::string> readRange(const FilmCommand& command, const model::Programme& programme,
                                     Range& range) {
  PictureOptions found;
  const auto read = [&](const std::string& stage, size_t& index) -> std::optional<std::string> {
    if (stage.empty()) return std::nullopt;
    if (auto wrong = readMoment(stage, 0, programme, found)) return wrong;
    index = static_cast<size_t>(found.time);
    return std::nullopt;
  };
  range.last = programme.stages.size() - 1;
  if (auto wrong = read(command.from, range.first)) return wrong;
  if (auto wrong = read(command.to, range.last)) return wrong;
  if (range.first <= range.last) return std::nullopt;
  return "--from \"" + command.from + "\" comes after --to \"" + command.to + "\"";
}

std::optional<std::string> readShape(const FilmCommand& command, PictureOptions& picture) {
  if (auto wrong = readSize(command.size, picture)) return wrong;
  if (picture.width % 2 == 0 && picture.height % 2 == 0) return std::nullopt;
  return "--size \"" + command.size + "\": a film's width and height are even numbers; take " +
         std::to_string(picture.width / 2 * 2) + "x" + std::to_string(picture.height / 2 * 2);
}

bool isFolder(const std::string& out) {
  std::error_code ignored;
  return out.ends_with('/') || std::filesystem::is_directory(out, ignored);
}

// The folder that takes the frames where no MP4 can be written.
std::string framesFolder(const std::string& out) {
  std::filesystem::path path(out);
  return path.replace_extension().string() + "-frames";
}

std::vector<double> daysOf(const model::Programme& programme, const Range& range) {
  std::vector<double> days;
  for (size_t i = range.first; i <= range.last; ++i) days.push_back(programme.stages[i].days);
  return days;
}

double lengthOf(const FilmCommand& command, const std::vector<double>& days) {
  if (command.length > 0) return command.length;
  double total = 0;
  for (const double each : days) total += each;
  return std::max(total * command.day, kLeastForAStage * static_cast<double>(days.size()));
}

// "4 min", for what is left at the pace so far.
std::string timeLeft(double spent, size_t done, size_t total) {
  const double left = spent / static_cast<double>(done) * static_cast<double>(total - done);
  if (left < 60) return std::to_string(static_cast<int>(std::ceil(left))) + " s";
  return std::to_string(static_cast<int>(std::lround(left / 60))) + " min";
}

// A film about to be made.
struct Take {
  const model::Model& model;
  Picturer& picturer;
  PictureOptions picture;
  bool ownViews = true;  // of each stage
  size_t first = 0;
  FilmPace pace;
  size_t frames = 0;
};

// What went wrong; empty when it went well or `stop` was asked.
std::string shoot(Take& take, FilmFile& film, const StopOnRequest& stop) {
  using Clock = std::chrono::steady_clock;
  constexpr size_t kFirstGuess = 25;  // frames, before the time left is told
  const Clock::time_point begun = Clock::now();
  const double step = take.pace.length() / static_cast<double>(take.frames);
  std::vector<StageView> own(take.first + take.pace.seconds().size());
  for (size_t i = 0; take.ownViews && i < own.size() && !stop.asked(); ++i)
    own[i] = take.picturer.viewOf(i);
  const auto views = filmViews(own, take.first, take.pace);
  FilmCamera camera(take.picturer.scene(), sheetOf(take.model, take.picture));
  Progress progress(take.frames);
  for (size_t i = 0; i < take.frames && !stop.asked(); ++i) {
    // The end of the frame's time: the last shows the end, and the first is of its own stage.
    const double last = static_cast<double>(take.first + views.size());
    take.picture.time =
        i + 1 == take.frames ? last : take.pace.at(static_cast<double>(i + 1) * step);
    const auto stage = static_cast<size_t>(std::ceil(take.picture.time)) - 1;
    if (take.ownViews) {
      const FilmLook look = camera.next(stage, views[stage - take.first], step);
      take.picture.camera = look.camera;
      take.picture.frame.section = look.section;
      take.picture.frame.seeThrough = look.seeThrough;
    }
    std::string told = take.model.programme.stages[stage].name;
    if (i >= kFirstGuess) {
      const std::chrono::duration<double> spent = Clock::now() - begun;
      told += ", " + timeLeft(spent.count(), i, take.frames) + " left";
    }
    progress.step(told);
    const Image image = take.picturer.picture(take.picture);
    if (std::string wrong = film.add(image.rgba.data()); !wrong.empty()) return wrong;
  }
  return "";
}

int failed(const std::string& out, const std::string& why) {
  std::cerr << out << ": the film was not written: " << why << "\n";
  return kProblems;
}

// Where it goes.
struct Place {
  std::string out;
  bool frames = false;  // a folder of them
};

Place placeOf(const FilmCommand& command) {
  if (isFolder(command.out)) return {command.out, true};
  const std::string lacking = noMp4();
  if (lacking.empty()) return {command.out, false};
  const std::string folder = framesFolder(command.out);
  std::cerr << command.out << ": no MP4 can be written: " << lacking
            << "\nIts frames go into the folder " << folder << " instead.\n";
  return {folder, true};
}

// The film is finished, or nothing is left of it.
int make(Take& take, const FilmShape& shape, const Place& place) {
  const StopOnRequest stop;  // before there is anything that would be left
  FilmOut film = place.frames ? openFrames(place.out, shape) : openMp4(place.out, shape);
  if (!film.file) return failed(place.out, film.wrong);
  std::string wrong = shoot(take, *film.file, stop);
  if (wrong.empty() && stop.asked()) {
    film.file.reset();
    std::cerr << "Stopped. Nothing is left of the film.\n";
    return kStopped;
  }
  if (wrong.empty()) wrong = film.file->finish();
  return wrong.empty() ? kWell : failed(place.out, wrong);
}

std::optional<std::string> wrongOptions(const FilmCommand& command, PictureOptions& picture) {
  if (auto wrong = readShape(command, picture)) return wrong;
  if (auto wrong = readOverlays(command.show, picture.overlays)) return wrong;
  if (!command.view.empty()) {
    if (auto wrong = readView(command.view, picture)) return wrong;
  }
  if (isFolder(command.out)) return std::nullopt;
  if (auto wrong = wouldReplaceJob(command.job, command.out)) return wrong;
  if (auto wrong = otherEnding(command.out, ".mp4", "a film"))
    return *wrong + ", or, for its frames as pictures, a folder with / at its end";
  return std::nullopt;
}

}  // namespace

int runFilm(const FilmCommand& command) {
  PictureOptions picture;
  if (auto wrong = wrongOptions(command, picture)) return wrongUsage(*wrong);
  const auto model = loadAndTell(command.job);
  if (!model) return kProblems;
  if (model->programme.stages.empty())
    return failed(command.out, "the programme has no stages to show");
  Range range;
  if (auto wrong = readRange(command, model->programme, range)) return wrongUsage(*wrong);
  const std::vector<double> days = daysOf(model->programme, range);
  const double length = lengthOf(command, days);
  if (length > kLongest) return wrongUsage("a film is an hour at most; make --day smaller");

  std::string why;
  const auto offscreen = Offscreen::create(why);
  if (!offscreen) return noOpenGl(why);
  const Place place = placeOf(command);
  const FilmShape shape{picture.width, picture.height, command.framesPerSecond, model->job.name};
  Picturer picturer(*model, *offscreen);
  const auto count = static_cast<size_t>(
      std::max(1L, std::lround(length * static_cast<double>(command.framesPerSecond))));
  Take take{*model,      picturer,
            picture,     command.view.empty(),
            range.first, FilmPace(days, range.first, length),
            count};
  const int result = make(take, shape, place);
  printAbout(command.job, picturer.lackingLetters());
  return result;
}

}  // namespace viewer
