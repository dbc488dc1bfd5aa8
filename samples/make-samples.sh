#!/usr/bin/env bash
# Makes the sample recordings from samples/texts/*.txt with free speech synthesis.
# Needs Debian's flite, festival, festvox-us-slt-hts, sox and ffmpeg. Run it from anywhere; it writes beside itself.
set -euo pipefail
cd "$(dirname "$0")"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# say VOICE NAME: texts/NAME.txt as 16 kHz mono sound with half a second of quiet at both ends.
say() {
  case $1 in
    rms) flite -voice rms --setf duration_stretch=1.05 -f "texts/$2.txt" -o "$work/raw.wav" ;;
    hts) text2wave -eval '(voice_cmu_us_slt_arctic_hts)' "texts/$2.txt" -o "$work/raw.wav" ;;
  esac
  sox -R -D "$work/raw.wav" -r 16000 -c 1 -b 16 "$work/$2.wav" gain -n -3 pad 0.5 0.5
}

# workshop NAME: a compressor behind the talk, a rattling hum in pink noise, some 15 dB below the voice.
workshop() {
  local seconds
  seconds=$(soxi -D "$work/$1.wav")
  sox -R -D -n -r 16000 -c 1 -b 16 "$work/hum.wav" synth "$seconds" sine 50 synth "$seconds" square mix 24 synth "$seconds" pinknoise mix gain -n -24
  sox -R -D -m -v 1 "$work/$1.wav" -v 1 "$work/hum.wav" "$work/$1-noisy.wav"
  mv "$work/$1-noisy.wav" "$work/$1.wav"
}

# pack NAME EXTENSION RECORDED-AT FFMPEG-OPTIONS...: one compressed file that carries its time, where it can.
pack() {
  local name=$1 extension=$2 recorded=$3
  shift 3
  ffmpeg -nostdin -v error -y -i "file:$work/$name.wav" "$@" -map_metadata -1 -fflags +bitexact -flags:a +bitexact \
    -metadata "creation_time=$recorded" -metadata "date=$recorded" "file:$name.$extension"
}

phone=(-c:a aac -ar 32000 -b:a 48k -f ipod) # no faststart: the index lies at the end, as phones write it
speech=(-c:a libopus -b:a 20k -application voip)

say rms 01-thursday-morning
pack 01-thursday-morning m4a 2026-04-09T08:10:00Z "${phone[@]}"
say hts 02-thursday-evening
pack 02-thursday-evening ogg 2026-04-09T18:40:00Z "${speech[@]}"
say rms 03-friday-morning
workshop 03-friday-morning
pack 03-friday-morning mp3 2026-04-10T07:30:00Z -c:a libmp3lame -ar 24000 -b:a 40k
say rms 04-friday-evening
pack 04-friday-evening flac 2026-04-10T17:55:00Z -c:a flac -compression_level 12
say rms 05-saturday-morning
pack 05-saturday-morning mp4 2026-04-11T08:20:00Z -f lavfi -i 'color=c=0x445566:s=192x108:r=5' -t "$(soxi -D "$work/05-saturday-morning.wav")" \
  -c:v libx264 -preset veryslow -crf 40 -pix_fmt yuv420p -flags:v +bitexact -c:a aac -ar 48000 -b:a 40k
say hts 06-saturday-evening
pack 06-saturday-evening m4a 2026-04-11T19:05:00Z "${phone[@]}"
say rms 07-monday-morning
pack 07-monday-morning opus 2026-04-13T07:45:00Z "${speech[@]}"
say rms 08-monday-evening
pack 08-monday-evening m4a 2026-04-13T17:30:00Z "${phone[@]}"
