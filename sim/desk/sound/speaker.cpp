#include "sim/desk/sound/speaker.h"

#include <AL/al.h>
#include <AL/alc.h>

#include <array>

#include "sim/desk/sound/waves.h"

namespace proofstand::desk {
namespace {

constexpr std::size_t kVoices = 12;  // sounding at once; the oldest gives way
constexpr float kAside = 0.5F;

}  // namespace

struct Speaker::Device {
  ALCdevice* device = nullptr;
  ALCcontext* context = nullptr;
  std::vector<ALuint> waves;
  std::array<ALuint, kVoices> voices{};
  std::size_t next = 0;

  ~Device() {
    if (context != nullptr) {
      alcMakeContextCurrent(context);
      alDeleteSources(static_cast<ALsizei>(voices.size()), voices.data());
      if (!waves.empty()) alDeleteBuffers(static_cast<ALsizei>(waves.size()), waves.data());
      alcMakeContextCurrent(nullptr);
      alcDestroyContext(context);
    }
    if (device != nullptr) alcCloseDevice(device);
  }
};

Speaker::Speaker() {
  auto opened = std::make_unique<Device>();
  opened->device = alcOpenDevice(nullptr);
  if (opened->device == nullptr) return;
  opened->context = alcCreateContext(opened->device, nullptr);
  if (opened->context == nullptr || alcMakeContextCurrent(opened->context) == ALC_FALSE) return;
  alGenSources(static_cast<ALsizei>(kVoices), opened->voices.data());
  opened->waves.resize(all_sounds().size());
  alGenBuffers(static_cast<ALsizei>(opened->waves.size()), opened->waves.data());
  if (alGetError() != AL_NO_ERROR) return;
  for (const Sound sound : all_sounds()) {
    const std::vector<std::int16_t> wave = make_wave(sound);
    alBufferData(opened->waves[static_cast<std::size_t>(sound)], AL_FORMAT_MONO16, wave.data(),
                 static_cast<ALsizei>(wave.size() * sizeof(std::int16_t)), kWaveRate_hz);
  }
  if (alGetError() == AL_NO_ERROR) device_ = std::move(opened);
}

Speaker::~Speaker() = default;

bool Speaker::silent() const { return device_ == nullptr; }

void Speaker::play(const Heard& heard, float volume_1) {
  if (silent() || volume_1 <= 0.0F) return;
  const ALuint voice = device_->voices[device_->next];
  device_->next = (device_->next + 1) % kVoices;
  alSourceStop(voice);
  alSourcei(voice, AL_BUFFER, static_cast<ALint>(device_->waves[static_cast<std::size_t>(heard.sound)]));
  alSourcef(voice, AL_GAIN, heard.loud_1 * volume_1);
  const float side = !heard.side ? 0.0F : *heard.side == event::HandId::Left ? -kAside : kAside;
  alSourcei(voice, AL_SOURCE_RELATIVE, AL_TRUE);
  alSource3f(voice, AL_POSITION, side, 0.0F, -1.0F);
  alSourcePlay(voice);
}

}  // namespace proofstand::desk
