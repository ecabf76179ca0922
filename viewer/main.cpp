#include <exception>
#include <iostream>

#include "viewer/commands/command_line.h"
#include "viewer/commands/exit_code.h"
#include "viewer/keep_memory.h"

int main(int argc, char** argv) {
  viewer::keepFreedMemory();
  try {
    return viewer::runCommandLine(argc, argv);
  } catch (const std::exception& error) {
    std::cerr << "stringcourse: this should not have happened: " << error.what() << "\n";
    return viewer::kProblems;
  }
}
