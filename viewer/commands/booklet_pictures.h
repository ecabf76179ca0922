// The pictures of the booklets: each stage at its end.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "model/drawing/crew_brief.h"
#include "viewer/picture.h"

namespace viewer {

enum class BookletFor { Crew, Client };

// "crew" or "client"; nothing for anything else.
std::optional<BookletFor> bookletNamed(const std::string& name);

// For the crew with the corners' letters, and dimensions where the stage is set out; for the client
// the building alone. `widest`: in pixels, where smaller ones are wanted.
PictureOptions bookletPicture(const model::Model& model, size_t stage, BookletFor reader,
                              int widest = 4096);

// Of every stage, or of one alone (the others are left without). `goOn` is told each stage before
// its picture is made; nothing comes back when it returns false.
std::optional<model::StagePictures> bookletPictures(const model::Model& model, Picturer& picturer,
                                                    BookletFor reader, std::optional<size_t> only,
                                                    const std::function<bool(size_t)>& goOn,
                                                    int widest = 4096);

// The whole file.
std::string bookletPdf(const model::Model& model, BookletFor reader,
                       const model::StagePictures& pictures, const model::BookletOptions& options);

}  // namespace viewer
