// Text made from bytes: valid UTF-8 with what decides lines and shapes more often than in bytes alone.
#pragma once

#include <random>
#include <string>

#include "project/project.h"

namespace tenter::fuzz {

/// A text of up to `most` pieces: letters, spaces, hyphens, soft hyphens, marks, ideographs, right-to-left
/// letters and controls, and any other character.
template <class Source>
std::string textFrom(Source& source, int most) {
    static constexpr const char* pieces[] = {"a",
                                             "W",
                                             "fi",
                                             "tide ",
                                             " ",
                                             "  ",
                                             "\n",
                                             "-",
                                             "\u00ad",
                                             "\u200b",
                                             "\u00a0",
                                             "/",
                                             "7",
                                             "(",
                                             ")",
                                             "$",
                                             "%",
                                             ".",
                                             "\u0301",
                                             "\u05d0",
                                             "\u0645\u062f",
                                             "\u6f6e",
                                             "\u0e17\u0e30",
                                             "\u0915\u094d\u0937",
                                             "\u200d",
                                             "\u202e",
                                             "\u2028",
                                             "\ufeff",
                                             "\U0001f30a",
                                             "\u00df",
                                             "\u0130",
                                             "\ufb01",
                                             "\u3000",
                                             "\u2003"};
    const auto whole = [&](int least, int highest) {
        return std::uniform_int_distribution<int>(least, highest)(source);
    };
    std::string text;
    for (int n = whole(0, most); n > 0; --n) {
        if (whole(0, 15) > 0) {
            text += pieces[whole(0, static_cast<int>(std::size(pieces)) - 1)];
            continue;
        }
        // Any character but surrogates, in three bytes.
        int character = whole(0x800, 0xFFFF);
        if (character >= 0xD800 && character <= 0xDFFF) character = 0xFFFD;
        text += static_cast<char>(0xE0 | (character >> 12));
        text += static_cast<char>(0x80 | ((character >> 6) & 0x3F));
        text += static_cast<char>(0x80 | (character & 0x3F));
    }
    return text;
}

/// Up to four runs of such text.
template <class Source>
project::Copy copyFrom(Source& source, int most) {
    const auto whole = [&](int highest) { return std::uniform_int_distribution<int>(0, highest)(source); };
    project::Copy copy;
    for (int n = whole(3); n >= 0; --n) {
        const auto kind = static_cast<project::Run::Kind>(whole(4));
        const bool isBreak = kind == project::Run::Kind::Break;
        const bool isLink = kind == project::Run::Kind::Link;
        copy.push_back({kind, isBreak ? std::string() : textFrom(source, most), isLink ? "#x" : ""});
    }
    return copy;
}

}  // namespace tenter::fuzz
