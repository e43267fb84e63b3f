#include "scenes.h"

#include <QLinearGradient>
#include <QPainter>
#include <QPainterPath>
#include <cmath>
#include <numbers>

#include "strokes.h"

namespace draw {
namespace {

constexpr QSize wide(1200, 800);
constexpr QSize tall(900, 1200);

QLinearGradient down(double top, double bottom, std::initializer_list<Stop> stops) {
    QLinearGradient gradient(0, top, 0, bottom);
    for (const Stop& stop : stops)
        gradient.setColorAt(stop.at, QColor(stop.colour));
    return gradient;
}

QColor tinted(const char* colour, int alpha) {
    QColor result(colour);
    result.setAlpha(alpha);
    return result;
}

/// A pool on wet sand: a flat, wavering shape that holds the sky.
void pool(QPainter& painter, Dice& dice, QPointF at, double width, double height, const QBrush& sky) {
    QPainterPath path;
    const double phase = between(dice, 0, 6);
    for (int i = 0; i <= 60; ++i) {
        const double turn = i / 60.0 * 2 * std::numbers::pi;
        const double reach = 1 + 0.16 * std::sin(3 * turn + phase) + 0.09 * std::sin(7 * turn + 2 * phase);
        const QPointF point = at + QPointF(std::cos(turn) * width * reach, std::sin(turn) * height * reach);
        i == 0 ? path.moveTo(point) : path.lineTo(point);
    }
    painter.setPen(QPen(tinted("#6a4d3b", 90), 2));
    painter.setBrush(sky);
    painter.drawPath(path);
}

void lowTide(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(11);
    wash(painter, {0, 0, 1200, 330}, {{0, "#6f92a6"}, {0.45, "#c9b9a6"}, {0.8, "#f2c79a"}, {1, "#f8dcb4"}});
    glow(painter, {770, 312}, 420, tinted("#fff0c9", 230));
    for (int i = 0; i < 26; ++i) {
        painter.setBrush(tinted("#fff3e0", static_cast<int>(between(dice, 14, 40))));
        painter.setPen(Qt::NoPen);
        painter.drawEllipse(QRectF(between(dice, -200, 1100), between(dice, 40, 240), between(dice, 160, 520),
                                   between(dice, 5, 20)));
    }
    Skyline(5, 318, 20, 210).fill(painter, 1200, 345, tinted("#7d8b93", 255));
    Skyline(8, 330, 12, 120).fill(painter, 1200, 350, tinted("#5c6c73", 255));
    wash(painter, {0, 338, 1200, 70}, {{0, "#f0cfa4"}, {1, "#b9b3a8"}});
    ripples(painter, dice, {0, 342, 1200, 60}, tinted("#ffffff", 120), 160, 150);
    wash(painter, {0, 404, 1200, 396}, {{0, "#c2a88a"}, {0.4, "#a78567"}, {1, "#6e5443"}});
    // Tide lines: each wave left a curved edge of foam and a darker, wetter strip.
    for (int i = 0; i < 8; ++i) {
        const double base = 412 + 15 * i + 5.2 * i * i;
        const Skyline line(40 + i, base, 7 + 2.4 * i, 190 + 26 * i);
        line.fill(painter, 1200, base + 30 + 9 * i, tinted("#5d4636", 26));
        QPainterPath edge(QPointF(0, line.at(0)));
        for (double x = 4; x <= 1200; x += 4)
            edge.lineTo(x, line.at(x));
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(tinted("#fff4e2", 130 - 9 * i), 1.2 + 0.35 * i));
        painter.drawPath(edge);
    }
    const struct {
        double x, y, w, h;
    } pools[] = {{250, 480, 150, 12}, {820, 505, 190, 17}, {480, 566, 220, 24}, {1010, 610, 170, 25},
                 {150, 650, 190, 30}, {660, 700, 270, 42}, {1090, 762, 160, 30}};
    for (const auto& p : pools)
        pool(painter, dice, {p.x, p.y}, p.w, p.h,
             down(p.y - p.h, p.y + p.h, {{0, "#f6d4a8"}, {0.5, "#d3bba6"}, {1, "#7f98a6"}}));
    ripples(painter, dice, {0, 430, 1200, 370}, tinted("#fbe6c8", 34), 240, 130);
    for (int i = 0; i < 9; ++i)
        bird(painter, {300 + i * 34 + between(dice, -10, 10), 170 + between(dice, -22, 22)}, 19,
             between(dice, -0.4, 0.9), QColor("#4a5558"));
    painter.end();
    finish(image, 101, 3, 0.22);
}

void dunes(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(23);
    wash(painter, {0, 0, 900, 560}, {{0, "#5f9bb8"}, {0.6, "#a9cdd3"}, {1, "#eae7d4"}});
    for (int i = 0; i < 34; ++i) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(tinted("#ffffff", static_cast<int>(between(dice, 14, 46))));
        painter.drawEllipse(QRectF(between(dice, -160, 820), between(dice, 90, 420), between(dice, 120, 420),
                                   between(dice, 10, 40)));
    }
    wash(painter, {0, 500, 900, 150}, {{0, "#4d8797"}, {1, "#86b3b4"}});
    ripples(painter, dice, {0, 502, 900, 80}, tinted("#ffffff", 130), 120, 120);
    Skyline(3, 575, 34, 240).fill(painter, 900, 1200, down(540, 800, {{0, "#e4d3a8"}, {1, "#c7ab7a"}}));
    for (int i = 0; i < 60; ++i) {
        const double x = between(dice, 0, 900);
        tuft(painter, dice, {x, Skyline(3, 575, 34, 240).at(x) + between(dice, 4, 30)}, between(dice, 22, 40),
             9, QColor("#7f8f52"), 0.35);
    }
    Skyline(9, 700, 52, 300).fill(painter, 900, 1200, down(650, 1000, {{0, "#efdfb6"}, {1, "#c9a973"}}));
    Skyline(14, 820, 70, 330)
        .fill(painter, 900, 1200, down(760, 1200, {{0, "#f3e4bd"}, {0.5, "#dbc08c"}, {1, "#b48f5d"}}));
    // The path: a pale ribbon that widens towards the feet.
    QPainterPath path(QPointF(505, 590));
    path.cubicTo({520, 690}, {380, 740}, {430, 850});
    path.cubicTo({480, 960}, {300, 1040}, {230, 1200});
    path.lineTo(640, 1200);
    path.cubicTo({600, 1040}, {640, 950}, {540, 840});
    path.cubicTo({470, 750}, {560, 690}, {520, 590});
    painter.setPen(Qt::NoPen);
    painter.setBrush(down(590, 1200, {{0, "#f6eccd"}, {1, "#ead5a5"}}));
    painter.drawPath(path);
    for (int i = 0; i < 26; ++i) {
        const double y = 690 + i * 19.0;
        const double reach = (y - 560) * 0.16;
        const double x = 470 - (y - 700) * 0.14 + between(dice, -0.5, 0.5) * reach;
        painter.setBrush(tinted("#a98752", 90));
        painter.drawEllipse(QPointF(x, y), reach * 0.10 + 1, reach * 0.05 + 0.8);
    }
    for (int i = 0; i < 120; ++i) {
        const double y = 730 + std::pow(i / 120.0, 1.3) * 500;
        double x = between(dice, -20, 920);
        const double middle = 470 - (y - 700) * 0.12;
        const double clear = 70 + (y - 600) * 0.26;
        if (std::abs(x - middle) < clear)
            x = middle + (x < middle ? -1 : 1) * (clear + between(dice, 0, 180));
        tuft(painter, dice, {x, y}, 42 + (y - 700) * 0.27, 14,
             QColor(dice() % 3 == 0 ? "#a9a35c" : "#6f8347"), 0.42);
    }
    painter.end();
    finish(image, 102, 2, 0.2);
}

void creek(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(37);
    wash(painter, {0, 0, 1200, 300}, {{0, "#3f5374"}, {0.5, "#a2768a"}, {0.85, "#eb9f74"}, {1, "#f7c789"}});
    glow(painter, {420, 292}, 330, tinted("#ffe2a2", 235));
    for (int i = 0; i < 22; ++i) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(tinted(i % 2 ? "#f6b58b" : "#5b5a7b", static_cast<int>(between(dice, 20, 60))));
        painter.drawEllipse(QRectF(between(dice, -200, 1000), between(dice, 50, 240), between(dice, 200, 600),
                                   between(dice, 6, 18)));
    }
    Skyline(4, 292, 16, 160).fill(painter, 1200, 330, QColor("#5d4f66"));
    wash(painter, {0, 300, 1200, 500}, {{0, "#8a7a4d"}, {0.35, "#66693f"}, {1, "#2e3a2a"}});
    for (int i = 0; i < 900; ++i) {
        const double depth = std::pow(i / 900.0, 1.6);
        tuft(painter, dice, {between(dice, -10, 1210), 306 + depth * 500}, 8 + depth * 54, 3,
             QColor(i % 5 == 0 ? "#a38a55"
                    : i % 3    ? "#5f6b3c"
                               : "#767442"),
             0.1);
    }
    QPainterPath water(QPointF(455, 303));
    water.cubicTo({470, 345}, {760, 345}, {720, 395});
    water.cubicTo({680, 455}, {250, 450}, {290, 545});
    water.cubicTo({330, 640}, {860, 620}, {800, 800});
    water.lineTo(330, 800);
    water.cubicTo({330, 690}, {60, 640}, {80, 540});
    water.cubicTo({100, 430}, {560, 440}, {585, 392});
    water.cubicTo({600, 355}, {420, 350}, {436, 303});
    painter.setPen(QPen(tinted("#3b2f2c", 150), 4));
    painter.setBrush(down(303, 800, {{0, "#ffd797"}, {0.25, "#e59a76"}, {0.6, "#8a6f8b"}, {1, "#3f5374"}}));
    painter.drawPath(water);
    painter.setClipPath(water);
    ripples(painter, dice, {60, 310, 800, 490}, tinted("#ffe9c4", 70), 260, 150);
    painter.setClipping(false);
    for (int i = 0; i < 46; ++i) {
        const double x = i < 24 ? between(dice, -20, 260) : between(dice, 880, 1220);
        tuft(painter, dice, {x, between(dice, 770, 830)}, between(dice, 120, 250), 8, QColor("#27301f"),
             i < 24 ? 0.18 : -0.12);
    }
    painter.end();
    finish(image, 103, 3, 0.28);
}

void causeway(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(41);
    wash(painter, {0, 0, 1200, 380}, {{0, "#8fb0bd"}, {0.7, "#d5dfdb"}, {1, "#eee8d9"}});
    for (int i = 0; i < 30; ++i) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(tinted("#ffffff", static_cast<int>(between(dice, 20, 60))));
        painter.drawEllipse(QRectF(between(dice, -200, 1100), between(dice, 30, 300), between(dice, 160, 520),
                                   between(dice, 10, 34)));
    }
    QPainterPath island(QPointF(610, 384));
    island.cubicTo({680, 352}, {700, 318}, {790, 312});
    island.cubicTo({880, 306}, {930, 336}, {1010, 352});
    island.cubicTo({1060, 362}, {1090, 376}, {1130, 384});
    painter.setBrush(down(306, 384, {{0, "#6f8560"}, {1, "#4d5f56"}}));
    painter.drawPath(island);
    painter.setBrush(QColor("#f4f1e6"));
    painter.drawRect(QRectF(822, 294, 46, 26));
    QPolygonF roof({{814, 296}, {845, 276}, {876, 296}});
    painter.setBrush(QColor("#a5523a"));
    painter.drawPolygon(roof);
    painter.setBrush(QColor("#55636a"));
    painter.drawRect(QRectF(840, 303, 9, 17));
    wash(painter, {0, 380, 1200, 50}, {{0, "#9fb7bb"}, {1, "#c3cbc3"}});
    ripples(painter, dice, {0, 382, 1200, 46}, tinted("#ffffff", 140), 120, 140);
    wash(painter, {0, 424, 1200, 376}, {{0, "#c9c2ac"}, {0.5, "#ab9d83"}, {1, "#7d6e5b"}});
    // The way over: wet sand that shines, wide at the viewer's feet.
    QPainterPath way(QPointF(820, 386));
    way.cubicTo({800, 460}, {560, 520}, {260, 800});
    way.lineTo(760, 800);
    way.cubicTo({790, 620}, {880, 500}, {850, 386});
    painter.setBrush(down(386, 800, {{0, "#e6e6da"}, {0.5, "#d5d3c4"}, {1, "#a9b4b3"}}));
    painter.drawPath(way);
    painter.setClipPath(way);
    ripples(painter, dice, {200, 400, 700, 400}, tinted("#ffffff", 90), 230, 160);
    painter.setClipping(false);
    ripples(painter, dice, {0, 440, 1200, 360}, tinted("#6b5b48", 46), 300, 190);
    for (int i = 0; i < 9; ++i) {
        const double depth = std::pow(i / 8.0, 1.8);
        const double x = 862 + depth * 235 - depth * depth * 60;
        const double y = 400 + depth * 330;
        const double height = 26 + depth * 270;
        const double lean = between(dice, -0.05, 0.05) * height;
        painter.setPen(QPen(tinted("#5c5245", 90), 3 + depth * 10, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(QPointF(x, y), QPointF(x + 16 + depth * 60, y + 6 + depth * 30));
        painter.setPen(QPen(QColor("#463c33"), 2.4 + depth * 10, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(QPointF(x, y), QPointF(x + lean, y - height));
        painter.setPen(QPen(QColor("#b9492f"), 2.4 + depth * 10, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(x + lean * 0.84, y - height * 0.84),
                         QPointF(x + lean * 0.7, y - height * 0.7));
    }
    for (int i = 0; i < 5; ++i)
        bird(painter, {250 + i * 58.0, 190 + between(dice, -30, 30)}, 30, between(dice, -0.3, 0.9),
             QColor("#59666b"));
    painter.end();
    finish(image, 104, 3, 0.2);
}

void moonrise(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(53);
    wash(painter, {0, 0, 1200, 470}, {{0, "#0b1530"}, {0.6, "#27385f"}, {0.9, "#6c6788"}, {1, "#a98b93"}});
    stars(painter, dice, {0, 0, 1200, 330}, 260, 2.2);
    const QPointF moon(745, 300);
    glow(painter, moon, 420, tinted("#ffe9c0", 170));
    painter.setBrush(QColor("#fff4d9"));
    painter.drawEllipse(moon, 88, 88);
    painter.setClipRegion(QRegion(657, 212, 176, 176, QRegion::Ellipse));
    for (int i = 0; i < 15; ++i) {
        painter.setBrush(tinted("#c3a983", static_cast<int>(between(dice, 16, 50))));
        painter.drawEllipse(moon + QPointF(between(dice, -70, 70), between(dice, -70, 70)),
                            between(dice, 8, 34), between(dice, 7, 26));
    }
    painter.setClipping(false);
    for (int i = 0; i < 14; ++i) {
        painter.setBrush(tinted("#3b4468", static_cast<int>(between(dice, 30, 90))));
        painter.drawEllipse(QRectF(between(dice, -100, 1000), between(dice, 320, 430),
                                   between(dice, 240, 620), between(dice, 5, 16)));
    }
    Skyline(6, 462, 22, 190).fill(painter, 420, 480, QColor("#1d2745"));
    const QRectF water(0, 468, 1200, 332);
    wash(painter, water, {{0, "#5b5f80"}, {0.3, "#2b3a60"}, {1, "#0b1430"}});
    ripples(painter, dice, water, tinted("#93a2c4", 60), 340, 170);
    lightPath(painter, dice, moon.x(), water, 190, tinted("#ffe9bf", 220));
    QPainterPath shore(QPointF(0, 800));
    shore.lineTo(0, 690);
    shore.cubicTo({170, 690}, {240, 742}, {420, 752});
    shore.cubicTo({560, 760}, {620, 792}, {700, 800});
    painter.setBrush(QColor("#070c1c"));
    painter.drawPath(shore);
    for (int i = 0; i < 34; ++i)
        tuft(painter, dice, {between(dice, -10, 360), between(dice, 700, 770)}, between(dice, 40, 110), 7,
             QColor("#070c1c"), 0.2);
    painter.end();
    finish(image, 105, 3, 0.3);
}

void winterStars(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(61);
    wash(painter, {0, 0, 900, 1200}, {{0, "#050a1a"}, {0.5, "#0f1c3c"}, {0.8, "#28406a"}, {1, "#4b6c86"}});
    // The galaxy: soft clouds along a slanting line, then dust lanes, then the stars themselves.
    for (int i = 0; i < 420; ++i) {
        const double along = between(dice, -0.1, 1.1);
        const double off = (between(dice, -1, 1) + between(dice, -1, 1) + between(dice, -1, 1)) / 3;
        const QPointF at(170 + along * 560 + off * 330, 1030 - along * 1060 + off * 170);
        const QColor tints[] = {tinted("#b7c6ff", 15), tinted("#ffd9c2", 13), tinted("#c9a7e8", 12)};
        glow(painter, at, between(dice, 40, 150) * (1 - 0.5 * std::abs(off)), tints[dice() % 3]);
    }
    for (int i = 0; i < 80; ++i) {
        const double along = between(dice, 0, 1);
        const QPointF at(190 + along * 560 + between(dice, -26, 26),
                         1010 - along * 1060 + between(dice, -26, 26));
        glow(painter, at, between(dice, 18, 60), tinted("#050a1a", 62));
    }
    for (int i = 0; i < 1700; ++i) {
        const double along = between(dice, -0.05, 1.05);
        const double off = (between(dice, -1, 1) + between(dice, -1, 1)) / 2;
        painter.setPen(Qt::NoPen);
        painter.setBrush(tinted("#ffffff", static_cast<int>(between(dice, 40, 170))));
        const double size = between(dice, 0.4, 1.1);
        painter.drawEllipse(QPointF(170 + along * 560 + off * 300, 1030 - along * 1060 + off * 150), size,
                            size);
    }
    stars(painter, dice, {0, 0, 900, 960}, 900, 3.2);
    glow(painter, {640, 990}, 320, tinted("#f0b77c", 80));
    Skyline(7, 980, 34, 250).fill(painter, 900, 1200, QColor("#101a2d"));
    Skyline(12, 1040, 66, 330).fill(painter, 900, 1200, QColor("#080e1c"));
    for (int i = 0; i < 70; ++i) {
        const double x = between(dice, -10, 910);
        tuft(painter, dice, {x, Skyline(12, 1040, 66, 330).at(x) + between(dice, 8, 60)},
             between(dice, 26, 84), 6, QColor("#080e1c"), 0.25);
    }
    // Somebody looking up.
    painter.setBrush(QColor("#04070f"));
    painter.setPen(Qt::NoPen);
    const double ground = Skyline(12, 1040, 66, 330).at(585) + 6;
    QPainterPath figure(QPointF(566, ground));
    figure.cubicTo({568, ground - 44}, {570, ground - 66}, {576, ground - 76});
    figure.cubicTo({582, ground - 84}, {594, ground - 84}, {598, ground - 74});
    figure.cubicTo({604, ground - 58}, {602, ground - 34}, {604, ground});
    painter.drawPath(figure);
    painter.drawEllipse(QPointF(585, ground - 92), 11, 12);
    painter.end();
    finish(image, 106, 3, 0.25);
}

void dome(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(67);
    wash(painter, {0, 0, 1200, 800}, {{0, "#0a1430"}, {0.55, "#1f3b66"}, {0.85, "#4f7f8f"}, {1, "#a9b78f"}});
    // Star trails turn about the pole.
    const QPointF pole(420, 210);
    for (int i = 0; i < 330; ++i) {
        const double radius = 16 + 1050 * std::pow(between(dice, 0, 1), 0.8);
        const QColor tints[] = {QColor(255, 255, 255), QColor(255, 226, 186), QColor(190, 214, 255)};
        QColor colour = tints[dice() % 3];
        colour.setAlphaF(static_cast<float>(between(dice, 0.12, 0.62)));
        painter.setPen(QPen(colour, between(dice, 0.6, 1.7), Qt::SolidLine, Qt::RoundCap));
        painter.setBrush(Qt::NoBrush);
        painter.drawArc(QRectF(pole.x() - radius, pole.y() - radius, 2 * radius, 2 * radius),
                        static_cast<int>(between(dice, 0, 360) * 16),
                        static_cast<int>(between(dice, 16, 24) * 16));
    }
    Skyline(5, 655, 30, 260).fill(painter, 1200, 800, QColor("#16283a"));
    Skyline(17, 705, 34, 300).fill(painter, 1200, 800, QColor("#0b1622"));
    painter.setPen(Qt::NoPen);
    glow(painter, {815, 610}, 210, tinted("#ffb869", 90));
    painter.setBrush(down(560, 720, {{0, "#33475a"}, {1, "#182635"}}));
    painter.drawRect(QRectF(705, 590, 220, 130));
    QPainterPath cap(QPointF(695, 592));
    cap.arcTo(QRectF(695, 470, 240, 244), 180, -180);
    cap.closeSubpath();
    QLinearGradient shell(695, 0, 935, 0);
    shell.setColorAt(0, QColor("#8fa3b3"));
    shell.setColorAt(0.45, QColor("#d5dde1"));
    shell.setColorAt(1, QColor("#52667a"));
    painter.setBrush(shell);
    painter.drawPath(cap);
    QPainterPath slit(QPointF(770, 590));
    slit.cubicTo({764, 540}, {776, 494}, {800, 471});
    slit.lineTo(836, 473);
    slit.cubicTo({812, 500}, {804, 548}, {808, 590});
    painter.setBrush(QColor("#0c1420"));
    painter.drawPath(slit);
    glow(painter, {792, 560}, 60, tinted("#ff8f5a", 150));
    painter.setPen(QPen(QColor("#39434d"), 13, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(798, 566), QPointF(800, 500));
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor("#ffc985"));
    painter.drawRect(QRectF(838, 640, 34, 80));
    painter.setBrush(QColor("#1c2c3a"));
    painter.drawRect(QRectF(700, 586, 230, 10));
    QPainterPath spill(QPointF(838, 720));
    spill.lineTo(872, 720);
    spill.lineTo(930, 800);
    spill.lineTo(790, 800);
    painter.setBrush(tinted("#ffc985", 60));
    painter.drawPath(spill);
    for (int i = 0; i < 60; ++i)
        tuft(painter, dice, {between(dice, -10, 1210), between(dice, 740, 815)}, between(dice, 30, 90), 6,
             QColor("#060d15"), 0.2);
    painter.end();
    finish(image, 107, 3, 0.26);
}

void curlews(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(71);
    wash(painter, {0, 0, 1200, 470}, {{0, "#7f6f8f"}, {0.4, "#d08a80"}, {0.75, "#f2b176"}, {1, "#fbd997"}});
    const QPointF sun(350, 410);
    glow(painter, sun, 420, tinted("#fff3c4", 220));
    painter.setBrush(QColor("#fff6d6"));
    painter.drawEllipse(sun, 44, 44);
    for (int i = 0; i < 30; ++i) {
        painter.setBrush(tinted(i % 3 ? "#fbd0a2" : "#7d6684", static_cast<int>(between(dice, 18, 58))));
        painter.drawEllipse(QRectF(between(dice, -200, 1050), between(dice, 60, 380), between(dice, 200, 640),
                                   between(dice, 6, 18)));
    }
    Skyline(21, 456, 14, 180).fill(painter, 1200, 480, QColor("#8a5d66"));
    wash(painter, {0, 466, 1200, 334}, {{0, "#f3c08a"}, {0.35, "#b07d74"}, {1, "#4a3a48"}});
    ripples(painter, dice, {0, 470, 1200, 330}, tinted("#4a3546", 70), 260, 240);
    lightPath(painter, dice, sun.x(), {0, 470, 1200, 330}, 150, tinted("#fff0c0", 210));
    const struct {
        double x, y, span, beat;
    } flock[] = {{560, 300, 120, 0.7},  {720, 250, 104, 0.45}, {690, 365, 132, 0.35}, {860, 310, 112, 0.85},
                 {1000, 245, 92, 0.55}, {930, 400, 124, 0.8},  {1090, 345, 100, 0.6}};
    for (const auto& one : flock) {
        const QColor dark("#3a2a35");
        bird(painter, {one.x, one.y}, one.span, one.beat, dark);
        // Body and the long bill, curved down.
        QPainterPath body;
        body.addEllipse(QPointF(one.x, one.y), one.span * 0.15, one.span * 0.052);
        painter.drawPath(body);
        painter.setPen(QPen(dark, one.span * 0.018, Qt::SolidLine, Qt::RoundCap));
        painter.setBrush(Qt::NoBrush);
        QPainterPath bill(QPointF(one.x - one.span * 0.14, one.y - one.span * 0.01));
        bill.quadTo({one.x - one.span * 0.25, one.y - one.span * 0.015},
                    {one.x - one.span * 0.31, one.y + one.span * 0.05});
        painter.drawPath(bill);
    }
    for (int i = 0; i < 30; ++i) {
        pool(painter, dice, {between(dice, 0, 1200), 560 + std::pow(between(dice, 0, 1), 1.2) * 230},
             between(dice, 20, 110), between(dice, 2, 9), tinted("#f6c892", 150));
    }
    painter.end();
    finish(image, 108, 3, 0.25);
}

void post(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(79);
    wash(painter, {0, 0, 900, 760}, {{0, "#9cc3cf"}, {0.7, "#d6e6e2"}, {1, "#eef0e2"}});
    for (int i = 0; i < 26; ++i) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(tinted("#ffffff", static_cast<int>(between(dice, 20, 60))));
        painter.drawEllipse(QRectF(between(dice, -160, 800), between(dice, 60, 620), between(dice, 160, 460),
                                   between(dice, 12, 44)));
    }
    Skyline(2, 742, 20, 170).fill(painter, 900, 780, tinted("#93aaa6", 255));
    wash(painter, {0, 758, 900, 442}, {{0, "#a9c8c6"}, {0.4, "#5f979c"}, {1, "#2d626e"}});
    ripples(painter, dice, {0, 762, 900, 438}, tinted("#eefaf5", 110), 300, 190);
    ripples(painter, dice, {0, 800, 900, 400}, tinted("#1f4f5a", 80), 160, 210);
    QLinearGradient wood(392, 0, 508, 0);
    wood.setColorAt(0, QColor("#544a42"));
    wood.setColorAt(0.35, QColor("#8d7f70"));
    wood.setColorAt(1, QColor("#3f3731"));
    QPainterPath timber(QPointF(400, 610));
    timber.lineTo(504, 604);
    timber.lineTo(516, 1200);
    timber.lineTo(386, 1200);
    painter.setBrush(wood);
    painter.drawPath(timber);
    for (int i = 0; i < 26; ++i) {
        const double x = between(dice, 402, 502);
        painter.setPen(QPen(tinted(i % 2 ? "#2f2925" : "#a99b8a", 90), between(dice, 1, 3)));
        const double y = between(dice, 620, 1050);
        painter.drawLine(QPointF(x, y), QPointF(x + between(dice, -3, 3), y + between(dice, 40, 160)));
    }
    painter.setPen(Qt::NoPen);
    for (int i = 0; i < 90; ++i) {
        painter.setBrush(QColor(i % 3 ? "#3d5443" : "#5b7355"));
        painter.drawEllipse(QPointF(between(dice, 384, 518), 1010 + 190 * std::pow(between(dice, 0, 1), 0.6)),
                            between(dice, 6, 17), between(dice, 8, 22));
    }
    painter.setBrush(down(598, 622, {{0, "#a89a89"}, {1, "#6d6156"}}));
    painter.drawEllipse(QPointF(452, 608), 54, 14);
    // The tern: white breast, grey back, black cap, red bill, forked tail.
    painter.setPen(QPen(QColor("#b43a22"), 6, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(448, 572), QPointF(446, 604));
    painter.drawLine(QPointF(474, 572), QPointF(474, 604));
    painter.setPen(Qt::NoPen);
    QPainterPath tail(QPointF(560, 528));
    tail.cubicTo({620, 540}, {690, 566}, {742, 600});
    tail.cubicTo({690, 582}, {650, 574}, {600, 566});
    tail.cubicTo({640, 588}, {672, 606}, {696, 628});
    tail.cubicTo({640, 604}, {580, 590}, {520, 576});
    painter.setBrush(QColor("#e4ebee"));
    painter.drawPath(tail);
    QPainterPath body(QPointF(366, 440));
    body.cubicTo({352, 500}, {372, 574}, {462, 582});
    body.cubicTo({540, 588}, {590, 566}, {616, 556});
    body.cubicTo({560, 500}, {500, 440}, {440, 412});
    body.cubicTo({420, 396}, {380, 400}, {366, 440});
    painter.setBrush(down(400, 590, {{0, "#ffffff"}, {0.6, "#f4f7f7"}, {1, "#c7d3d6"}}));
    painter.drawPath(body);
    QPainterPath wing(QPointF(440, 440));
    wing.cubicTo({500, 440}, {560, 490}, {690, 566});
    wing.cubicTo({600, 566}, {500, 556}, {456, 520});
    wing.cubicTo({430, 498}, {424, 456}, {440, 440});
    painter.setBrush(down(440, 570, {{0, "#b4c2c9"}, {1, "#8497a1"}}));
    painter.drawPath(wing);
    painter.setBrush(QColor("#ffffff"));
    painter.drawEllipse(QPointF(392, 412), 46, 42);
    QPainterPath crown(QPointF(345, 404));
    crown.cubicTo({352, 362}, {412, 352}, {440, 392});
    crown.cubicTo({448, 404}, {452, 420}, {452, 432});
    crown.cubicTo({430, 414}, {392, 408}, {345, 404});
    painter.setBrush(QColor("#20262b"));
    painter.drawPath(crown);
    QPainterPath bill(QPointF(350, 402));
    bill.cubicTo({320, 404}, {290, 414}, {268, 424});
    bill.cubicTo({294, 424}, {326, 424}, {352, 420});
    painter.setBrush(QColor("#c8462a"));
    painter.drawPath(bill);
    painter.setBrush(QColor("#0e1114"));
    painter.drawEllipse(QPointF(372, 405), 6, 6);
    painter.setBrush(QColor("#ffffff"));
    painter.drawEllipse(QPointF(370, 403), 1.8, 1.8);
    painter.end();
    finish(image, 109, 3, 0.18);
}

void murmuration(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(83);
    wash(painter, {0, 0, 1200, 620}, {{0, "#8ea6b4"}, {0.5, "#c6cfcd"}, {0.85, "#ecd9bd"}, {1, "#f4e0ba"}});
    for (int i = 0; i < 40; ++i) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(tinted(i % 3 ? "#ffffff" : "#8195a3", static_cast<int>(between(dice, 16, 44))));
        painter.drawEllipse(QRectF(between(dice, -200, 1050), between(dice, 30, 520), between(dice, 200, 640),
                                   between(dice, 10, 38)));
    }
    // Thousands of specks along a curved sheet that is dense in its folds.
    std::normal_distribution<double> spread(0, 1);
    for (int i = 0; i < 5200; ++i) {
        const double along = between(dice, 0, 1);
        const double fold = std::sin(along * 5.4 + 0.5);
        const double thick = 22 + 60 * std::abs(std::sin(along * 3.1 + 0.3));
        const QPointF at(170 + along * 850 + 70 * std::sin(along * 9) + spread(dice) * thick * 0.7,
                         300 - fold * 120 - along * 40 + spread(dice) * thick);
        painter.setBrush(tinted("#36444f", static_cast<int>(between(dice, 110, 230))));
        painter.save();
        painter.translate(at);
        painter.rotate(-20 * fold + between(dice, -24, 24));
        painter.drawEllipse(QPointF(0, 0), between(dice, 1.4, 3.4), between(dice, 0.7, 1.5));
        painter.restore();
    }
    Skyline(31, 606, 14, 170).fill(painter, 1200, 640, QColor("#7b8a8c"));
    Skyline(33, 618, 10, 110).fill(painter, 1200, 640, QColor("#5b6c6e"));
    wash(painter, {0, 624, 1200, 176}, {{0, "#e3d6ba"}, {0.4, "#a8b1ad"}, {1, "#5f7078"}});
    ripples(painter, dice, {0, 628, 1200, 172}, tinted("#ffffff", 90), 190, 200);
    ripples(painter, dice, {0, 640, 1200, 160}, tinted("#41525b", 80), 120, 240);
    painter.end();
    finish(image, 110, 3, 0.22);
}

void ferry(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(89);
    wash(painter, {0, 0, 1200, 430}, {{0, "#5b93b5"}, {0.65, "#b5d3d8"}, {1, "#ecead9"}});
    for (int i = 0; i < 40; ++i) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(tinted("#ffffff", static_cast<int>(between(dice, 18, 62))));
        painter.drawEllipse(QRectF(between(dice, -200, 1100), between(dice, 60, 320), between(dice, 140, 460),
                                   between(dice, 12, 42)));
    }
    Skyline(51, 404, 30, 210).fill(painter, 1200, 450, QColor("#8fa8a4"));
    Skyline(52, 418, 18, 150).fill(painter, 1200, 450, QColor("#6b8a7f"));
    wash(painter, {0, 430, 1200, 370}, {{0, "#8fbcc0"}, {0.3, "#4b8d9b"}, {1, "#194d61"}});
    ripples(painter, dice, {0, 434, 1200, 366}, tinted("#e8f7f4", 90), 360, 210);
    ripples(painter, dice, {0, 470, 1200, 330}, tinted("#0f3c50", 90), 220, 260);
    // Hull, house, funnel; a wake behind.
    for (int i = 0; i < 160; ++i) {
        const double back = std::pow(between(dice, 0, 1), 1.2);
        painter.setBrush(tinted("#ffffff", static_cast<int>(between(dice, 40, 170) * (1 - 0.7 * back))));
        painter.drawEllipse(QRectF(800 + back * 420, 556 + between(dice, -5, 24) + back * 46,
                                   between(dice, 20, 100), between(dice, 2, 6)));
    }
    QPainterPath hull(QPointF(286, 470));
    hull.cubicTo({300, 520}, {330, 560}, {366, 584});
    hull.lineTo(806, 584);
    hull.cubicTo({822, 556}, {828, 520}, {830, 492});
    hull.lineTo(420, 492);
    hull.cubicTo({380, 492}, {330, 484}, {286, 470});
    painter.setBrush(down(470, 584, {{0, "#24405c"}, {0.72, "#1a3048"}, {0.73, "#b3452c"}, {1, "#8f3420"}}));
    painter.drawPath(hull);
    painter.setBrush(QColor("#f6f1e3"));
    painter.drawRect(QRectF(430, 432, 350, 60));
    painter.drawRect(QRectF(470, 384, 180, 50));
    painter.setBrush(QColor("#d9cfb6"));
    painter.drawRect(QRectF(422, 426, 366, 8));
    painter.drawRect(QRectF(462, 378, 196, 8));
    painter.setBrush(QColor("#35566b"));
    for (int i = 0; i < 9; ++i)
        painter.drawRoundedRect(QRectF(446 + i * 37, 446, 24, 22), 4, 4);
    for (int i = 0; i < 5; ++i)
        painter.drawRect(QRectF(480 + i * 33, 394, 26, 22));
    painter.setBrush(QColor("#d99a2b"));
    painter.drawPolygon(QPolygonF({{690, 426}, {700, 344}, {748, 344}, {752, 426}}));
    painter.setBrush(QColor("#24405c"));
    painter.drawPolygon(QPolygonF({{698, 360}, {700, 344}, {748, 344}, {749, 360}}));
    painter.setPen(QPen(QColor("#e9e1cc"), 4));
    painter.drawLine(QPointF(520, 380), QPointF(520, 288));
    painter.drawLine(QPointF(498, 316), QPointF(542, 316));
    painter.setPen(QPen(QColor("#e9e1cc"), 2));
    for (int i = 0; i < 8; ++i)
        painter.drawLine(QPointF(310 + i * 15, 458 + i * 2), QPointF(310 + i * 15, 478 + i * 2));
    painter.drawLine(QPointF(304, 458), QPointF(428, 472));
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor("#c8462a"));
    painter.drawPolygon(QPolygonF({{522, 290}, {570, 300}, {522, 312}}));
    for (int i = 0; i < 60; ++i) {
        painter.setBrush(tinted("#ffffff", static_cast<int>(between(dice, 60, 190))));
        painter.drawEllipse(QRectF(between(dice, 300, 800), 578 + between(dice, -3, 14),
                                   between(dice, 16, 70), between(dice, 2, 6)));
    }
    for (int i = 0; i < 24; ++i) {
        painter.setBrush(tinted("#1a3048", 24));
        painter.drawEllipse(QRectF(360 + between(dice, -10, 20), 590 + i * 4, 430 - i * 8, 7));
    }
    const struct {
        double x, y, span;
    } gulls[] = {{860, 330, 44}, {930, 380, 36}, {905, 270, 32}, {250, 300, 30}};
    for (const auto& gull : gulls)
        bird(painter, {gull.x, gull.y}, gull.span, between(dice, 0.2, 0.9), QColor("#f9fbfb"));
    painter.end();
    finish(image, 111, 3, 0.2);
}

void sail(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(97);
    wash(painter, {0, 0, 900, 720}, {{0, "#d98f6b"}, {0.4, "#eeb88d"}, {0.8, "#f7dcb4"}, {1, "#fbeccd"}});
    glow(painter, {250, 560}, 380, tinted("#fff8e0", 220));
    for (int i = 0; i < 30; ++i) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(tinted(i % 3 ? "#fff2dc" : "#b56f5d", static_cast<int>(between(dice, 16, 50))));
        painter.drawEllipse(QRectF(between(dice, -160, 800), between(dice, 60, 560), between(dice, 180, 520),
                                   between(dice, 8, 28)));
    }
    Skyline(61, 694, 30, 200).fill(painter, 900, 740, QColor("#b98a7c"));
    Skyline(62, 708, 16, 130).fill(painter, 900, 740, QColor("#8f6b69"));
    wash(painter, {0, 718, 900, 482}, {{0, "#f0c9a0"}, {0.3, "#a08a8b"}, {1, "#3c5167"}});
    ripples(painter, dice, {0, 722, 900, 478}, tinted("#fff0da", 100), 320, 200);
    lightPath(painter, dice, 250, {0, 722, 900, 478}, 130, tinted("#fff6dc", 190));
    ripples(painter, dice, {0, 780, 900, 420}, tinted("#2c4157", 80), 190, 230);
    // Boat and sails, leaning a little from the wind; their reflection below.
    painter.save();
    painter.translate(540, 830);
    painter.rotate(4);
    QPainterPath mainSail(QPointF(10, -520));
    mainSail.cubicTo({60, -400}, {170, -200}, {205, -70});
    mainSail.cubicTo({130, -54}, {70, -52}, {8, -58});
    painter.setBrush(down(-520, -50, {{0, "#a33c28"}, {1, "#c65b3b"}}));
    painter.drawPath(mainSail);
    QPainterPath jib(QPointF(-4, -470));
    jib.cubicTo({-60, -330}, {-120, -190}, {-170, -80});
    jib.cubicTo({-110, -72}, {-60, -76}, {-8, -92});
    painter.setBrush(down(-470, -80, {{0, "#d98a52"}, {1, "#efb777"}}));
    painter.drawPath(jib);
    painter.setPen(QPen(tinted("#7c2a1b", 130), 2));
    for (int i = 1; i < 5; ++i)
        painter.drawLine(QPointF(9, -520 + i * 96.0), QPointF(16 + i * 41.0, -500 + i * 94.0));
    painter.setPen(QPen(QColor("#4a3528"), 8, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(2, 0), QPointF(2, -535));
    painter.drawLine(QPointF(2, -54), QPointF(210, -62));
    painter.setPen(Qt::NoPen);
    QPainterPath hull(QPointF(-190, -32));
    hull.cubicTo({-150, 20}, {-100, 42}, {-60, 44});
    hull.lineTo(150, 44);
    hull.cubicTo({190, 30}, {205, 0}, {212, -30});
    hull.cubicTo({80, -14}, {-60, -14}, {-190, -32});
    painter.setBrush(down(-32, 44, {{0, "#f5efe0"}, {0.45, "#e8dcc2"}, {0.46, "#2c4a52"}, {1, "#1f363d"}}));
    painter.drawPath(hull);
    painter.setBrush(QColor("#2b3440"));
    painter.drawEllipse(QPointF(120, -58), 13, 15);
    painter.drawRoundedRect(QRectF(102, -46, 40, 30), 10, 10);
    painter.restore();
    for (int i = 0; i < 60; ++i) {
        painter.setBrush(tinted(i % 3 ? "#a9492f" : "#e8dcc2", static_cast<int>(between(dice, 20, 66))));
        const double depth = between(dice, 0, 1);
        painter.drawEllipse(QRectF(430 + between(dice, -80, 170), 884 + depth * 260,
                                   between(dice, 40, 150) * (1 - 0.5 * depth), 3 + 3 * depth));
    }
    for (int i = 0; i < 40; ++i) {
        painter.setBrush(tinted("#ffffff", static_cast<int>(between(dice, 50, 170))));
        painter.drawEllipse(QRectF(between(dice, 350, 740), 870 + between(dice, -4, 12),
                                   between(dice, 14, 60), between(dice, 2, 5)));
    }
    // A channel buoy.
    painter.setBrush(QColor("#2f6b4f"));
    painter.drawPolygon(QPolygonF({{138, 930}, {156, 838}, {192, 838}, {212, 930}}));
    painter.drawPolygon(QPolygonF({{158, 826}, {175, 790}, {190, 826}}));
    painter.setBrush(QColor("#3f8262"));
    painter.drawPolygon(QPolygonF({{138, 930}, {156, 838}, {170, 838}, {165, 930}}));
    painter.setBrush(QColor("#24503c"));
    painter.drawEllipse(QPointF(175, 932), 48, 13);
    ripples(painter, dice, {90, 932, 170, 60}, tinted("#ffffff", 130), 18, 90);
    painter.end();
    finish(image, 112, 3, 0.2);
}

void lighthouse(QImage& image) {
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Dice dice(103);
    wash(painter, {0, 0, 900, 1000}, {{0, "#071127"}, {0.6, "#1b345c"}, {0.9, "#46657f"}, {1, "#8a8f8c"}});
    stars(painter, dice, {0, 0, 900, 760}, 620, 2.8);
    // Meteors.
    for (int i = 0; i < 4; ++i) {
        const QPointF head(between(dice, 80, 760), between(dice, 90, 420));
        const QPointF tail = head + QPointF(between(dice, 70, 150), -between(dice, 50, 100));
        QLinearGradient streak(head, tail);
        streak.setColorAt(0, QColor(255, 255, 255, 230));
        streak.setColorAt(1, QColor(255, 255, 255, 0));
        painter.setPen(QPen(QBrush(streak), 2.4, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(head, tail);
    }
    painter.setPen(Qt::NoPen);
    const QPointF lamp(452, 470);
    const struct { QPointF a, b; } beams[] = {{{-40, 330}, {-40, 470}}, {{940, 420}, {940, 560}}};
    for (const auto& beam : beams) {
        QLinearGradient light(lamp, (beam.a + beam.b) / 2);
        light.setColorAt(0, QColor(255, 240, 196, 220));
        light.setColorAt(1, QColor(255, 240, 196, 8));
        painter.setBrush(light);
        painter.drawPolygon(QPolygonF({lamp + QPointF(0, -10), beam.a, beam.b, lamp + QPointF(0, 10)}));
    }
    wash(painter, {0, 930, 900, 270}, {{0, "#4b6478"}, {0.3, "#223c58"}, {1, "#0a172c"}});
    ripples(painter, dice, {0, 934, 900, 266}, tinted("#9fb7c8", 60), 220, 170);
    QPainterPath rock(QPointF(150, 1010));
    rock.cubicTo({230, 940}, {300, 900}, {380, 884});
    rock.cubicTo({470, 868}, {560, 884}, {640, 930});
    rock.cubicTo({720, 970}, {800, 1000}, {900, 1010});
    rock.lineTo(900, 1200);
    rock.lineTo(60, 1200);
    painter.setBrush(down(870, 1200, {{0, "#2a3440"}, {0.4, "#151c28"}, {1, "#070b14"}}));
    painter.drawPath(rock);
    QPainterPath tower(QPointF(398, 892));
    tower.lineTo(418, 520);
    tower.lineTo(486, 520);
    tower.lineTo(508, 892);
    QLinearGradient stone(398, 0, 508, 0);
    stone.setColorAt(0, QColor("#8f9aa6"));
    stone.setColorAt(0.4, QColor("#e9e6dc"));
    stone.setColorAt(1, QColor("#56616f"));
    painter.setBrush(stone);
    painter.drawPath(tower);
    painter.setClipPath(tower);
    painter.setBrush(tinted("#9b3324", 225));
    painter.drawRect(QRectF(390, 590, 130, 78));
    painter.drawRect(QRectF(390, 746, 130, 78));
    QLinearGradient shade(398, 0, 508, 0);
    shade.setColorAt(0.3, QColor(10, 16, 30, 0));
    shade.setColorAt(1, QColor(10, 16, 30, 190));
    painter.setBrush(shade);
    painter.drawRect(QRectF(390, 500, 130, 400));
    painter.setClipping(false);
    painter.setBrush(QColor("#ffd68c"));
    painter.drawRoundedRect(QRectF(444, 700, 14, 26), 6, 6);
    painter.drawRoundedRect(QRectF(446, 548, 12, 22), 6, 6);
    painter.setBrush(QColor("#1a222d"));
    painter.drawRect(QRectF(404, 508, 96, 13));
    painter.setBrush(QColor("#ffe9b0"));
    painter.drawRect(QRectF(426, 440, 52, 68));
    painter.setPen(QPen(QColor("#1a222d"), 4));
    for (int i = 0; i < 4; ++i)
        painter.drawLine(QPointF(426 + i * 17.3, 440), QPointF(426 + i * 17.3, 508));
    painter.setPen(QPen(QColor("#1a222d"), 2.5));
    painter.drawLine(QPointF(404, 490), QPointF(500, 490));
    painter.setPen(Qt::NoPen);
    QPainterPath cap(QPointF(418, 442));
    cap.cubicTo({424, 404}, {480, 404}, {486, 442});
    painter.setBrush(QColor("#7f2a1d"));
    painter.drawPath(cap);
    painter.drawEllipse(QPointF(452, 406), 6, 9);
    glow(painter, lamp, 210, tinted("#fff0c0", 190));
    painter.setBrush(QColor("#e5dfd0"));
    painter.drawRect(QRectF(532, 846, 104, 62));
    painter.setBrush(QColor("#39424f"));
    painter.drawPolygon(QPolygonF({{522, 850}, {546, 812}, {622, 812}, {646, 850}}));
    painter.setBrush(QColor("#ffcf7d"));
    painter.drawRect(QRectF(552, 866, 18, 20));
    painter.drawRect(QRectF(596, 866, 18, 20));
    for (int i = 0; i < 90; ++i)
        tuft(painter, dice, {between(dice, 90, 900), between(dice, 1010, 1190)}, between(dice, 20, 70), 6,
             QColor(i % 3 ? "#0b1119" : "#1d2a2a"), 0.2);
    painter.end();
    finish(image, 113, 3, 0.25);
}

}  // namespace

const std::vector<Scene>& scenes() {
    static const std::vector<Scene> all = {
        {"low-tide", wide, lowTide},
        {"dunes", tall, dunes},
        {"creek", wide, creek},
        {"causeway", wide, causeway},
        {"moonrise", wide, moonrise},
        {"winter-stars", tall, winterStars},
        {"dome", wide, dome},
        {"curlews", wide, curlews},
        {"post", tall, post},
        {"murmuration", wide, murmuration},
        {"ferry", wide, ferry},
        {"sail", tall, sail},
        {"lighthouse", tall, lighthouse},
    };
    return all;
}

}  // namespace draw
