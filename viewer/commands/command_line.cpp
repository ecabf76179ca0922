#include "viewer/commands/command_line.h"

#include <CLI/CLI.hpp>
#include <filesystem>
#include <functional>
#include <iostream>

#include "model/exchange/reading_tables.h"
#include "viewer/app.h"
#include "viewer/commands/bond_command.h"
#include "viewer/commands/book_command.h"
#include "viewer/commands/brief_command.h"
#include "viewer/commands/drawing_command.h"
#include "viewer/commands/example_job.h"
#include "viewer/commands/file_commands.h"
#include "viewer/commands/film_command.h"
#include "viewer/commands/lines_command.h"
#include "viewer/commands/output.h"
#include "viewer/commands/picture_command.h"
#include "viewer/commands/picture_options.h"
#include "viewer/commands/programme_command.h"
#include "viewer/commands/readings_command.h"
#include "viewer/commands/report_command.h"
#include "viewer/commands/rod_command.h"
#include "viewer/commands/table_commands.h"
#include "viewer/commands/walkthrough_command.h"

namespace viewer {
namespace {

constexpr const char* kExitCodes =
    "Exit status: 0 well (warnings too), 1 problems in the job or a file that could not be\n"
    "written, 2 a wrong command line, 3 no OpenGL 3.3 to draw with. Problems go to standard\n"
    "error as file:line:column: what is wrong; what would be right.";

// What the chosen command does; set when its options are read.
using Action = std::function<int()>;

// A command's examples, below its options.
void examples(CLI::App* command, const std::string& lines) {
  command->footer("Examples:\n" + lines);
}

CLI::App* jobCommand(CLI::App& app, const char* name, const char* does, std::string& job) {
  CLI::App* command = app.add_subcommand(name, does);
  command->add_option("job", job, "the job file, JOB.toml")->required()->type_name("JOB");
  return command;
}

// --csv and --json.
void addStyles(CLI::App* command, model::TableStyle& style) {
  CLI::Option* csv = command->add_flag_callback(
      "--csv", [&] { style = model::TableStyle::Csv; }, "as CSV, for a spreadsheet");
  command
      ->add_flag_callback(
          "--json", [&] { style = model::TableStyle::Json; }, "as JSON, for a program")
      ->excludes(csv);
}

using RunTable = int (*)(const TableOptions&);

CLI::App* addTable(CLI::App& app, const char* name, const char* does, RunTable run,
                   TableOptions& options, Action& action) {
  CLI::App* command = jobCommand(app, name, does, options.job);
  addStyles(command, options.style);
  command->callback(
      [&options, &action, run] { action = [&options, run] { return run(options); }; });
  const std::string line = std::string("  stringcourse ") + name;
  examples(command, line + " house.toml\n" + line + " house.toml --csv > " + name + ".csv\n");
  return command;
}

void addSetUp(CLI::App* command, TableOptions& options) {
  command
      ->add_option(
          "--set-up", options.setUp,
          "a set-up of the job: what is read on the staff from there, and how a level that "
          "cannot be read is carried on")
      ->type_name("NAME");
}

void addLines(CLI::App& app, TableOptions& options, Action& action) {
  CLI::App* lines = addTable(app, "lines",
                             "What to set out: profile boards and their marks, lines against the "
                             "site, checks by tape, limits, level pins",
                             runLines, options, action);
  lines
      ->add_option("--part", options.part, "one of boards, lines, tape, limits, pins; default: all")
      ->check(CLI::IsMember({"boards", "lines", "tape", "limits", "pins"}));
  examples(lines,
           "  stringcourse lines house.toml\n"
           "  stringcourse lines house.toml --part tape\n"
           "  stringcourse lines house.toml --part boards --csv > boards.csv\n"
           "  stringcourse lines house.toml --part pins --set-up Site\n");
  addSetUp(lines, options);
  CLI::App* pegs =
      addTable(app, "pegs", "Every peg and mark with its coordinates, for a total station", runPegs,
               options, action);
  addSetUp(pegs, options);
  examples(pegs,
           "  stringcourse pegs house.toml --csv > pegs.csv\n"
           "  stringcourse pegs house.toml --set-up Site\n");
}

void addTables(CLI::App& app, TableOptions& options, Action& action) {
  addTable(app, "check", "Say everything that is wrong with a job", runCheck, options, action);
  CLI::App* levels = addTable(app, "levels", "The schedule of levels", runLevels, options, action);
  addSetUp(levels, options);
  examples(levels,
           "  stringcourse levels house.toml\n"
           "  stringcourse levels house.toml --csv > levels.csv\n"
           "  stringcourse levels house.toml --set-up Site\n");
  addLines(app, options, action);
  CLI::App* bond =
      addTable(app, "bond",
               "The outer leaf laid dry: how each pier comes out in bricks, every cut, "
               "the small moves that save them, and how heights come out in courses",
               runBond, options, action);
  bond->add_option("--part", options.part,
                   "one of stretches, bricks, moves, units, cellar, heights; default: all")
      ->check(CLI::IsMember({"stretches", "bricks", "moves", "units", "cellar", "heights"}));
  examples(bond,
           "  stringcourse bond house.toml\n"
           "  stringcourse bond house.toml --part moves\n"
           "  stringcourse bond house.toml --part bricks --csv > bricks.csv\n");
  CLI::App* takeoff =
      addTable(app, "takeoff", "Quantities, and what to order", runTakeoff, options, action);
  CLI::Option* byStage =
      takeoff->add_flag("--by-stage", options.byStage, "the same, stage by stage");
  CLI::Option* lintels =
      takeoff->add_flag("--lintels", options.lintels,
                        "the schedule of lintels, padstones and sills, opening by opening");
  takeoff
      ->add_flag("--loading", options.loading,
                 "bricks and blocks to load out at each run of wall, lift by lift, in packs")
      ->excludes(byStage)
      ->excludes(lintels);
  examples(takeoff,
           "  stringcourse takeoff house.toml\n"
           "  stringcourse takeoff house.toml --by-stage --csv > order.csv\n"
           "  stringcourse takeoff house.toml --loading\n");
  CLI::App* stages =
      addTable(app, "stages", "The programme: every stage, its days and what it waits for",
               runStages, options, action);
  stages->add_option("--stage", options.stage,
                     "one stage by id, number or name, or all: what is done, what is there at its "
                     "end, its caution");
  examples(stages,
           "  stringcourse stages house.toml\n"
           "  stringcourse stages house.toml --stage dig-trenches\n"
           "  stringcourse stages house.toml --csv > stages.csv\n");
}

void addProgramme(CLI::App& app, ProgrammeCommand& options, Action& action) {
  CLI::App* command = jobCommand(app, "programme",
                                 "When each stage is done and what decides it: dates, floats, the "
                                 "critical ones, hold points and deliveries",
                                 options.job);
  addStyles(command, options.style);
  CLI::Option* part =
      command
          ->add_option("--part", options.part,
                       "one of dates, events, rates; default: dates and events, and as CSV dates")
          ->check(CLI::IsMember({"dates", "events", "rates"}));
  CLI::Option* from =
      command
          ->add_option("--from", options.from,
                       "instead a look ahead: day by day from that date, who does what and what "
                       "happens")
          ->type_name("DATE")
          ->excludes(part);
  command->add_option("--days", options.days, "how far it looks")
      ->capture_default_str()
      ->check(CLI::Range(1, 400))
      ->needs(from);
  CLI::Option* against =
      command
          ->add_option("--against", options.against,
                       "instead what moved against another plan, the job file as it was")
          ->type_name("JOB")
          ->excludes(part)
          ->excludes(from);
  CLI::Option* out =
      command
          ->add_option("--out", options.out,
                       "instead a file for a phone's or an office's calendar: hold points, "
                       "deliveries, muck-away, decisions")
          ->type_name("FILE.ics")
          ->excludes(part)
          ->excludes(from)
          ->excludes(against);
  command->add_flag("--stages", options.stages, "the stages in it too")->needs(out);
  command->callback([&] { action = [&options] { return runProgramme(options); }; });
  examples(command,
           "  stringcourse programme house.toml\n"
           "  stringcourse programme house.toml --csv > programme.csv\n"
           "  stringcourse programme house.toml --from 2027-04-12 --days 7\n"
           "  stringcourse programme house.toml --against house-in-march.toml\n"
           "  stringcourse programme house.toml --out house.ics\n");
}

void addBook(CLI::App& app, BookCommand& options, Action& action) {
  CLI::App* command = app.add_subcommand(
      "book", "A level book: reduced levels, checks, closing error, adjusted levels");
  command
      ->add_option("file", options.file,
                   "the book as CSV; its first row: point,backsight,intermediate,foresight, and if "
                   "wanted distance,known,level,remark; metres; one row is one point; a change "
                   "point has a foresight and a backsight")
      ->required()
      ->type_name("FILE.csv");
  addStyles(command, options.style);
  command->add_option("--method", options.method, "rise-and-fall, or collimation: by its height")
      ->check(CLI::IsMember({"rise-and-fall", "collimation"}))
      ->capture_default_str();
  command
      ->add_option("--job", options.job,
                   "a job file: levels of points that are its bench marks, by name, are known, and "
                   "all others come out above its 0.000")
      ->type_name("JOB");
  command->add_option("--start", options.start, "level of the first point, in place of the book's")
      ->type_name("LEVEL");
  command->add_option("--close", options.close, "level of the last point, in place of the book's")
      ->type_name("LEVEL");
  command->add_option("--staff", options.staff, "length of the staff; default: 5")
      ->type_name("METRES");
  command
      ->add_option("--allow", options.allow,
                   "closing error allowed over one set-up, in millimetres; it grows with the root "
                   "of their number; default: 5")
      ->type_name("MM");
  CLI::Option* adjust = command->add_flag(
      "--adjust", options.adjust, "share the closing error over the set-ups, when it is allowed");
  command->add_flag("--anyway", options.anyway, "adjust whatever the closing error")->needs(adjust);
  command->callback([&] { action = [&options] { return runBook(options); }; });
  examples(command,
           "  stringcourse book monday.csv --job house.toml\n"
           "  stringcourse book monday.csv --start 49.872\n"
           "  stringcourse book monday.csv --method collimation --adjust\n"
           "  stringcourse book monday.csv --adjust --csv > levels.csv\n");
}

void addReadings(CLI::App& app, ReadingsCommand& options, Action& action) {
  CLI::App* command = jobCommand(
      app, "readings", "What was read on site against the drawing, and what it changes above",
      options.job);
  addStyles(command, options.style);
  command->add_option("--set", options.set, "one set of readings by name; default: all")
      ->type_name("NAME");
  command
      ->add_option("--what", options.what,
                   "one of deviations, changes, beds, walls, rafters; default: all, and as CSV "
                   "deviations")
      ->check(CLI::IsMember(model::readingPartKeys()));
  command->callback([&] { action = [&options] { return runReadings(options); }; });
  examples(command,
           "  stringcourse readings house.toml\n"
           "  stringcourse readings house.toml --what changes\n"
           "  stringcourse readings house.toml --set Concrete --csv > concrete.csv\n");
}

void addReport(CLI::App& app, ReportCommand& options, Action& action) {
  CLI::App* command = jobCommand(
      app, "report", "What was read against the drawing, and the questions, for the designer",
      options.job);
  command
      ->add_option("--out", options.out,
                   "the file to write; its ending says which: PDF to read and answer on, or CSV, a "
                   "row for each reading and question")
      ->required()
      ->type_name("FILE.pdf|FILE.csv");
  command->add_option("--paper", options.paper, "A4 or A3")->capture_default_str();
  command->add_option("--set", options.set, "one set of readings by name; default: all")
      ->type_name("NAME");
  command->add_option("--date", options.date,
                      "for the title block; default: room to write it by hand");
  command->callback([&] { action = [&options] { return runReport(options); }; });
  examples(command,
           "  stringcourse report house.toml --out house-report.pdf\n"
           "  stringcourse report house.toml --set Concrete --date 2027-05-20 --out report.pdf\n"
           "  stringcourse report house.toml --out house-report.csv\n");
}

void addBrief(CLI::App& app, BriefCommand& options, Action& action) {
  CLI::App* command = jobCommand(
      app, "brief",
      "A page for each stage, to print, for the crew or for the client; or levels, sizes "
      "and questions for the designer",
      options.job);
  command->add_option("--out", options.out, "the file to write; for the designer FILE.csv too")
      ->required()
      ->type_name("FILE.pdf");
  command->add_option("--for", options.reader, "crew, client or designer")->capture_default_str();
  command
      ->add_option("--stage", options.stage,
                   "one stage, by id, number or name (see `stages`); default: all, with contents")
      ->type_name("STAGE");
  command->add_option("--date", options.date,
                      "for the title block; default: room to write it by hand");
  command->callback([&] { action = [&options] { return runBrief(options); }; });
  examples(command,
           "  stringcourse brief house.toml --out house-crew.pdf\n"
           "  stringcourse brief house.toml --stage dig-cellar --out today.pdf\n"
           "  stringcourse brief house.toml --for client --date 2027-04-12 --out for-you.pdf\n"
           "  stringcourse brief house.toml --for designer --out house-designer.pdf\n");
}

void addPicture(CLI::App& app, PictureCommand& options, Action& action) {
  CLI::App* command =
      jobCommand(app, "picture", "One moment of the job as a PNG, or several stages into a folder",
                 options.job);
  CLI::Option* stage = command->add_option(
      "--stage", options.stage,
      "the stage, by id, number or name (see `stages`); default: the last. Several with commas and "
      "ranges, such as 3,5,8-12, or all: a picture of each, into a folder");
  CLI::Option* at =
      command->add_option("--at", options.at, "how far into it, 0 to 1; default: 1, its end");
  CLI::Option* course =
      command
          ->add_option("--course", options.course,
                       "in place of a stage, when that course of bricks is laid all round; 1 is "
                       "the first over the damp course, -1 the first under it")
          ->type_name("N")
          ->excludes(stage)
          ->excludes(at)
          ->check([](const std::string& text) {
            return text == "0" ? std::string("there is no course 0") : std::string();
          });
  command->add_option("--corner", options.corner, "when it is laid at that corner")
      ->type_name("C")
      ->needs(course);
  command->add_option("--view", options.view, "from where: " + viewNames())->capture_default_str();
  command->add_option("--size", options.size, "WIDTHxHEIGHT in pixels")->capture_default_str();
  command
      ->add_option("--show", options.show, "what is laid over it, with commas: " + overlayNames())
      ->capture_default_str();
  command->add_option("--section", options.section,
                      "cut: the side to take away (north, south, east, west), or x=3500, y=2000");
  command->add_option("--level", options.level,
                      "a level plane with its rod: metres, or a level of the schedule by name");
  command->add_option("--set-up", options.setUp,
                      "a set-up of the job, by name: levels then show what is read on the staff");
  command->add_flag("--outlines", options.outlines,
                    "faint outlines of what comes next, dashed ones of what the stage took away");
  command->add_flag("--see-through{ground}", options.seeThrough,
                    "the ground as if it were glass; --see-through=others: all but the stage's own "
                    "work");
  command
      ->add_option("--out", options.out,
                   "the file to write; or a folder, which several stages need: there each picture "
                   "has its stage's number and id for a name, as a walkthrough's have")
      ->required()
      ->type_name("FILE.png|FOLDER/");
  command->callback([&] { action = [&options] { return runPicture(options); }; });
  examples(command,
           "  stringcourse picture house.toml --out house.png\n"
           "  stringcourse picture house.toml --stage dig-trenches --at 0.5 --view south-east \\\n"
           "      --show lines,levels,corners --size 1920x1080 --out trenches.png\n"
           "  stringcourse picture house.toml --stage 12 --section south --out cut.png\n"
           "  stringcourse picture house.toml --course 14 --corner C --show caption,lines \\\n"
           "      --out course.png\n"
           "  stringcourse picture house.toml --stage all --size 3840x2160 --out stages/\n");
}

void addFilm(CLI::App& app, FilmCommand& options, Action& action) {
  CLI::App* command = jobCommand(
      app, "film", "The stages as a film: walls rise course by course, digs go down", options.job);
  command
      ->add_option("--out", options.out,
                   "the file to write, as MP4; or, with / at its end, a folder for its frames as "
                   "numbered pictures, which is what is made too where FFmpeg is not there")
      ->required()
      ->type_name("FILE.mp4|FOLDER/");
  command->add_option("--size", options.size, "WIDTHxHEIGHT in pixels, both even numbers")
      ->capture_default_str();
  command->add_option("--fps", options.framesPerSecond, "frames in a second")
      ->check(CLI::Range(1, 60))
      ->type_name("N")
      ->capture_default_str();
  CLI::Option* day = command
                         ->add_option("--day", options.day,
                                      "seconds of film for a working day; short stages get more, "
                                      "long ones less")
                         ->check(CLI::Range(0.01, 60.0))
                         ->type_name("SECONDS")
                         ->capture_default_str();
  command->add_option("--length", options.length, "in its place, seconds of the whole film")
      ->check(CLI::Range(1.0, 3600.0))
      ->type_name("SECONDS")
      ->excludes(day);
  command
      ->add_option("--from", options.from,
                   "the stage it begins with, by id, number or name (see `stages`); default: the "
                   "first")
      ->type_name("STAGE");
  command->add_option("--to", options.to, "the stage it ends with; default: the last")
      ->type_name("STAGE");
  command->add_option("--view", options.view,
                      "from where: " + viewNames() +
                          "; default: from where each stage is seen best, going there gently");
  command
      ->add_option("--show", options.show, "what is laid over it, with commas: " + overlayNames())
      ->capture_default_str();
  command->callback([&] { action = [&options] { return runFilm(options); }; });
  examples(command,
           "  stringcourse film house.toml --out house.mp4\n"
           "  stringcourse film house.toml --length 30 --size 640x360 --out short.mp4\n"
           "  stringcourse film house.toml --from dig-trenches --to damp-course --day 2 \\\n"
           "      --view south-east --out below-ground.mp4\n"
           "  stringcourse film house.toml --length 10 --out frames/\n"
           "H.264 where FFmpeg has it, with a keyframe each second. Ctrl-C stops it and leaves\n"
           "nothing behind.\n");
}

void addDrawing(CLI::App& app, DrawingCommand& options, Action& action) {
  CLI::App* command = jobCommand(
      app, "drawing", "The setting-out drawing to scale, as PDF to print or as DXF", options.job);
  command->add_option("--out", options.out, "the file to write; its ending says which")
      ->required()
      ->type_name("FILE.pdf|FILE.dxf");
  command->add_option("--paper", options.paper, "A3 or A4")->capture_default_str();
  command
      ->add_option("--scale", options.scale,
                   "such as 1:50; default: the largest standard scale at which the site fits")
      ->type_name("1:N");
  command->add_option("--date", options.date,
                      "for the title block; default: room to write it by hand");
  command->callback([&] { action = [&options] { return runDrawing(options); }; });
  examples(
      command,
      "  stringcourse drawing house.toml --out house.pdf\n"
      "  stringcourse drawing house.toml --paper A4 --scale 1:100 --out house.pdf\n"
      "  stringcourse drawing house.toml --out house.dxf\n"
      "Print the PDF at 100 %, without fitting it to the page, and measure its scale bar. In the\n"
      "DXF one unit is one millimetre on site.\n");
}

void addRod(CLI::App& app, RodCommand& options, Action& action) {
  CLI::App* command =
      jobCommand(app, "rod", "The gauge rod of every corner: courses and what comes at which level",
                 options.job);
  command->add_option("--corner", options.corner, "one corner, by its letter; default: every one")
      ->type_name("C");
  command->add_flag(
      "--as-built", options.asBuilt,
      "from the concrete as it was read, its courses gauged anew up to the damp course");
  addStyles(command, options.style);
  CLI::Option* out =
      command->add_option("--out", options.out, "at full size instead, as strips to print and cut")
          ->type_name("FILE.pdf");
  command->add_option("--paper", options.paper, "A4 or A3")->capture_default_str()->needs(out);
  command->callback([&] { action = [&options] { return runRod(options); }; });
  examples(
      command,
      "  stringcourse rod house.toml --corner C\n"
      "  stringcourse rod house.toml --csv > rods.csv\n"
      "  stringcourse rod house.toml --corner C --out rod-c.pdf\n"
      "Print the PDF at 100 %, without fitting it to the page, and measure its check lines.\n");
}

struct FileOptions {
  std::string job, out;
};

void addFiles(CLI::App& app, FileOptions& share, FileOptions& fresh, WalkthroughCommand& walk,
              Action& action) {
  CLI::App* command = jobCommand(
      app, "share", "The building, stage by stage, as a GLB that others can open", share.job);
  command->add_option("--out", share.out, "the file to write")->required()->type_name("FILE.glb");
  command->callback([&] { action = [&share] { return runShare(share.job, share.out); }; });
  examples(command, "  stringcourse share house.toml --out house.glb\n");

  command =
      jobCommand(app, "walkthrough",
                 "A picture of every stage, the booklets, tables and GLB, into a folder", walk.job);
  command
      ->add_option("--out", walk.out,
                   "the folder, made if need be; what an earlier walkthrough wrote there goes, and "
                   "nothing else")
      ->capture_default_str();
  command->add_option("--view", walk.view,
                      "from where: " + viewNames() +
                          "; default: stage, each stage from where its work is seen best");
  command->add_option("--size", walk.size, "WIDTHxHEIGHT in pixels")->capture_default_str();
  command->add_option("--show", walk.show,
                      "laid over every picture, with commas between: " + overlayNames() +
                          "; default: what each stage needs");
  command->callback([&] { action = [&walk] { return runWalkthrough(walk); }; });
  examples(command, "  stringcourse walkthrough house.toml --out house-pictures\n");

  command = app.add_subcommand("new", "A commented job file to start from");
  command->add_option("file", fresh.out, "the file to write; must not be there yet")
      ->required()
      ->type_name("FILE.toml");
  command->callback([&] { action = [&fresh] { return runNew(fresh.out); }; });
  examples(command, "  stringcourse new house.toml\n");
}

// A word that is no file and looks like none is a mistyped command.
bool looksLikeCommand(const std::string& word) {
  std::error_code ignored;
  return word.find_first_of("./\\") == std::string::npos && !std::filesystem::exists(word, ignored);
}

int openWindow(const std::string& job, const CLI::App& app) {
  if (!job.empty() && looksLikeCommand(job)) {
    std::string names;
    for (const CLI::App* command : app.get_subcommands({})) names += " " + command->get_name();
    return wrongUsage("there is no command \"" + job +
                      "\" and no job file of that name; commands:" + names);
  }
  const std::string path = job.empty() ? exampleJob() : job;
  if (path.empty()) return wrongUsage("name a job file, or make one: stringcourse new house.toml");
  return runWindow(path);
}

int parse(CLI::App& app, int argc, const char* const* argv) {
  try {
    app.parse(argc, argv);
    return kWell;
  } catch (const CLI::Success& success) {  // help or version
    app.exit(success);
    return -1;
  } catch (const CLI::ParseError& error) {
    app.exit(error, std::cout, std::cerr);
    return kUsage;
  }
}

}  // namespace

int runCommandLine(int argc, const char* const* argv) {
  CLI::App app{
      "Stringcourse: a masonry job from its drawing's numbers, seen rising stage by stage"};
  app.name("stringcourse");
  app.set_version_flag("--version", "stringcourse " STRINGCOURSE_VERSION);
  app.require_subcommand(0, 1);
  app.footer(std::string("Examples:\n"
                         "  stringcourse                     open the example job\n"
                         "  stringcourse house.toml          open a job in the window\n"
                         "  stringcourse check house.toml    say what is wrong with it\n"
                         "  stringcourse COMMAND --help      more about a command\n\n") +
             kExitCodes);
  std::string job;
  app.add_option("job", job, "a job file to open in the window")->type_name("JOB");

  Action action;
  TableOptions table;
  ProgrammeCommand programme;
  BookCommand book;
  ReadingsCommand readings;
  ReportCommand report;
  BriefCommand brief;
  PictureCommand picture;
  FilmCommand film;
  DrawingCommand drawing;
  RodCommand rod;
  WalkthroughCommand walk;
  FileOptions share, fresh;
  addTables(app, table, action);
  addProgramme(app, programme, action);
  addBook(app, book, action);
  addReadings(app, readings, action);
  addReport(app, report, action);
  addBrief(app, brief, action);
  addPicture(app, picture, action);
  addFilm(app, film, action);
  addDrawing(app, drawing, action);
  addRod(app, rod, action);
  addFiles(app, share, fresh, walk, action);

  const int parsed = parse(app, argc, argv);
  if (parsed != kWell) return parsed < 0 ? kWell : parsed;
  if (!action) return openWindow(job, app);
  if (!job.empty()) return wrongUsage("\"" + job + "\" is too much; give the command first");
  return action();
}

}  // namespace viewer
