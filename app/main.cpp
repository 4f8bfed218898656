#include "app/cli/cli.h"

int main(int argc, char** argv)
{
    return fb::runCommandLine(argc, argv);
}
