// The pictures of the row view: which sizes are decoded, and when the cache comes to rest.
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtTest>

#include "row/pictures.h"

namespace tenter::desktop {

using row::Pictures;
using row::PictureSlot;

class PictureCacheTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() {
        QImage image(600, 400, QImage::Format_RGB32);
        image.fill(QColor(0x30, 0x60, 0x70));
        file_ = folder_.filePath("reeds.png");
        QVERIFY(image.save(file_));
    }

    // Variants side by side show one file in several sizes.
    void decodesEverySizeThatIsShownOnce() {
        Pictures pictures;
        QSignalSpy arrived(&pictures, &Pictures::arrived);
        const std::vector<PictureSlot> slots{{{300, 200}}, {{240, 160}}, {{150, 100}}, {{120, 80}}};
        const auto paint = [&] {
            pictures.beginRound();
            for (const PictureSlot& slot : slots) {
                const Pictures::Found found = pictures.find(file_, slot);
                if (found.state == Pictures::State::Shown) QCOMPARE(found.image.size(), slot.size);
            }
        };
        connect(&pictures, &Pictures::arrived, this, paint);
        paint();
        QTRY_COMPARE(arrived.size(), static_cast<qsizetype>(slots.size()));
        pictures.waitUntilIdle(5000);
        QVERIFY(!pictures.isBusy());
        QTest::qWait(300);
        QCOMPARE(arrived.size(), static_cast<qsizetype>(slots.size()));
    }

    void decodesOnlyTheLastSizeOfADrag() {
        Pictures pictures;
        QSignalSpy arrived(&pictures, &Pictures::arrived);
        for (int width = 300; width > 200; width -= 20) {
            const PictureSlot slot{{width, width * 2 / 3}};
            pictures.beginRound();
            pictures.find(file_, slot);
            if (width == 300) QTRY_COMPARE(arrived.size(), 1);
        }
        QTRY_COMPARE(arrived.size(), 2);
        QVERIFY(!pictures.isBusy());
        pictures.beginRound();
        QCOMPARE(pictures.find(file_, {{220, 146}}).image.size(), QSize(220, 146));
        QVERIFY(!pictures.isBusy());
    }

private:
    QTemporaryDir folder_;
    QString file_;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::PictureCacheTest)
#include "picture_cache_test.moc"
