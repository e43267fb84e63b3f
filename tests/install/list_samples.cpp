// Prints the path of each sample that the start page offers.
#include <QCoreApplication>
#include <cstdio>

#include "document/samples.h"

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    for (const tenter::desktop::Sample& sample : tenter::desktop::findSamples())
        std::printf("%s\n", sample.file.c_str());
}
