// How the program keeps memory between one building and the next.
#pragma once

namespace viewer {

// Lets freed memory stay with the process. A job is built anew each time that it is saved, and
// handing some ten megabytes back and getting them again, page by page, takes a third as long as
// building it. To be called once, at the start.
void keepFreedMemory();

}  // namespace viewer
