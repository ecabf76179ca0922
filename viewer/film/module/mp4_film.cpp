// MP4 through FFmpeg's libraries. Built as a module of its own: see film_module.h.
extern "C" {
#include <libavcodec/avcodec.h>
#include <libavformat/avformat.h>
#include <libavutil/opt.h>
#include <libswscale/swscale.h>
}

#include <array>
#include <memory>
#include <sstream>

#include "viewer/film/film_module.h"

namespace viewer {
namespace {

// About what the eye takes for the drawing itself: H.264's constant rate factor, MPEG-4's
// quantiser.
constexpr const char* kRateFactor = "19";
constexpr int kQuantiser = 3;

struct Freeing {
  void operator()(AVCodecContext* p) const { avcodec_free_context(&p); }
  void operator()(AVFrame* p) const { av_frame_free(&p); }
  void operator()(AVPacket* p) const { av_packet_free(&p); }
  void operator()(SwsContext* p) const { sws_freeContext(p); }
  void operator()(AVFormatContext* p) const {
    if (p->pb != nullptr) avio_closep(&p->pb);
    avformat_free_context(p);
  }
};
template <typename Thing>
using Own = std::unique_ptr<Thing, Freeing>;

std::string words(const char* doing, int error) {
  std::array<char, AV_ERROR_MAX_STRING_SIZE> text{};
  av_strerror(error, text.data(), text.size());
  return std::string(doing) + ": " + text.data();
}

const AVCodec* firstOf(const std::string& encoders) {
  std::istringstream names(encoders);
  for (std::string name; std::getline(names, name, ',');)
    if (const AVCodec* codec = avcodec_find_encoder_by_name(name.c_str())) return codec;
  return nullptr;
}

class Mp4Film : public FilmFile {
 public:
  std::string open(const char* path, const FilmShape& shape, const char* encoders);
  std::string add(const std::uint8_t* rgba) override;
  std::string finish() override;

 private:
  std::string openEncoder(const AVCodec* codec, const FilmShape& shape);
  std::string openConversion();
  std::string drain();

  Own<AVFormatContext> format_;
  Own<AVCodecContext> encoder_;
  Own<SwsContext> conversion_;
  Own<AVFrame> frame_;
  Own<AVPacket> packet_;
  AVStream* stream_ = nullptr;  // the format's own
};

std::string Mp4Film::openEncoder(const AVCodec* codec, const FilmShape& shape) {
  encoder_.reset(avcodec_alloc_context3(codec));
  if (!encoder_) return "no memory for the encoder";
  encoder_->width = shape.width;
  encoder_->height = shape.height;
  encoder_->pix_fmt = AV_PIX_FMT_YUV420P;  // the one that every player has
  encoder_->time_base = {1, shape.framesPerSecond};
  encoder_->framerate = {shape.framesPerSecond, 1};
  encoder_->gop_size = shape.framesPerSecond;  // a keyframe each second, to scrub to
  encoder_->sample_aspect_ratio = {1, 1};
  encoder_->color_range = AVCOL_RANGE_MPEG;
  encoder_->colorspace = AVCOL_SPC_BT709;
  encoder_->color_primaries = AVCOL_PRI_BT709;
  encoder_->color_trc = AVCOL_TRC_BT709;
  // No version of the library in the file.
  encoder_->flags |= AV_CODEC_FLAG_BITEXACT | AV_CODEC_FLAG_GLOBAL_HEADER;
  if (codec->id == AV_CODEC_ID_H264) {  // unknown to other encoders than x264, and then left out
    av_opt_set(encoder_->priv_data, "preset", "fast", 0);
    av_opt_set(encoder_->priv_data, "tune", "animation", 0);
    av_opt_set(encoder_->priv_data, "crf", kRateFactor, 0);
    // What it carries from frame to frame comes out differently from run to run (x264 164): without
    // it the same job gives the same film to the byte.
    av_opt_set(encoder_->priv_data, "mbtree", "0", 0);
  } else {
    encoder_->flags |= AV_CODEC_FLAG_QSCALE;
    encoder_->global_quality = FF_QP2LAMBDA * kQuantiser;
  }
  const int error = avcodec_open2(encoder_.get(), codec, nullptr);
  return error < 0 ? words("the encoder cannot be opened", error) : "";
}

std::string Mp4Film::openConversion() {
  const int width = encoder_->width, height = encoder_->height;
  conversion_.reset(sws_getContext(
      width, height, AV_PIX_FMT_RGBA, width, height, AV_PIX_FMT_YUV420P,
      SWS_AREA | SWS_ACCURATE_RND | SWS_FULL_CHR_H_INP | SWS_BITEXACT, nullptr, nullptr, nullptr));
  if (!conversion_) return "the colours cannot be converted";
  const int* rec709 = sws_getCoefficients(SWS_CS_ITU709);
  sws_setColorspaceDetails(conversion_.get(), rec709, 1, rec709, 0, 0, 1 << 16, 1 << 16);
  frame_.reset(av_frame_alloc());
  packet_.reset(av_packet_alloc());
  if (!frame_ || !packet_) return "no memory for a frame";
  frame_->format = AV_PIX_FMT_YUV420P;
  frame_->width = width;
  frame_->height = height;
  frame_->pts = -1;
  const int error = av_frame_get_buffer(frame_.get(), 0);
  return error < 0 ? words("no memory for a frame", error) : "";
}

std::string Mp4Film::open(const char* path, const FilmShape& shape, const char* encoders) {
  const AVCodec* codec = firstOf(encoders);
  if (codec == nullptr) return std::string("FFmpeg has none of the encoders ") + encoders;
  AVFormatContext* format = nullptr;
  int error = avformat_alloc_output_context2(&format, nullptr, "mp4", path);
  if (error < 0) return words("FFmpeg writes no MP4", error);
  format_.reset(format);
  format_->flags |= AVFMT_FLAG_BITEXACT;
  if (std::string wrong = openEncoder(codec, shape); !wrong.empty()) return wrong;
  if (std::string wrong = openConversion(); !wrong.empty()) return wrong;
  stream_ = avformat_new_stream(format_.get(), nullptr);
  if (stream_ == nullptr) return "no memory for the stream";
  stream_->time_base = encoder_->time_base;
  stream_->avg_frame_rate = encoder_->framerate;
  avcodec_parameters_from_context(stream_->codecpar, encoder_.get());
  av_dict_set(&format_->metadata, "title", shape.title.c_str(), 0);
  error = avio_open(&format_->pb, path, AVIO_FLAG_WRITE);
  if (error < 0) return words("it cannot be opened", error);
  // The table of contents at the front: a phone begins to play before it has the whole file.
  AVDictionary* options = nullptr;
  av_dict_set(&options, "movflags", "+faststart", 0);
  error = avformat_write_header(format_.get(), &options);
  av_dict_free(&options);
  return error < 0 ? words("it cannot be written", error) : "";
}

// Writes the packets that the encoder has ready.
std::string Mp4Film::drain() {
  for (;;) {
    int error = avcodec_receive_packet(encoder_.get(), packet_.get());
    if (error == AVERROR(EAGAIN) || error == AVERROR_EOF) return "";
    if (error < 0) return words("a frame cannot be encoded", error);
    packet_->stream_index = stream_->index;
    packet_->duration = 1;
    av_packet_rescale_ts(packet_.get(), encoder_->time_base, stream_->time_base);
    error = av_interleaved_write_frame(format_.get(), packet_.get());
    if (error < 0) return words("it cannot be written", error);
  }
}

std::string Mp4Film::add(const std::uint8_t* rgba) {
  int error = av_frame_make_writable(frame_.get());
  if (error < 0) return words("no memory for a frame", error);
  const std::uint8_t* planes[] = {rgba};
  const int strides[] = {encoder_->width * 4};
  sws_scale(conversion_.get(), planes, strides, 0, encoder_->height, frame_->data,
            frame_->linesize);
  ++frame_->pts;
  error = avcodec_send_frame(encoder_.get(), frame_.get());
  return error < 0 ? words("a frame cannot be encoded", error) : drain();
}

std::string Mp4Film::finish() {
  int error = avcodec_send_frame(encoder_.get(), nullptr);
  if (error < 0) return words("the last frames cannot be encoded", error);
  if (std::string wrong = drain(); !wrong.empty()) return wrong;
  error = av_write_trailer(format_.get());
  if (error < 0) return words("it cannot be written", error);
  error = avio_closep(&format_->pb);
  return error < 0 ? words("it cannot be written", error) : "";
}

}  // namespace
}  // namespace viewer

extern "C" __attribute__((visibility("default"))) viewer::FilmFile* stringcourseFilm(
    const char* path, const viewer::FilmShape& shape, const char* encoders, std::string& wrong) {
  av_log_set_level(AV_LOG_QUIET);  // what goes wrong is told by the program
  auto film = std::make_unique<viewer::Mp4Film>();
  wrong = film->open(path, shape, encoders);
  return wrong.empty() ? film.release() : nullptr;
}
