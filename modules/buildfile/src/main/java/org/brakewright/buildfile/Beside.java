package org.brakewright.buildfile;

import java.nio.ByteBuffer;

/** Gives the files that a build file names; who reads a build file opens none. */
@FunctionalInterface
public interface Beside {
    /** For a text without a folder. */
    Beside NOTHING = name -> new Found.Missing("this text has no folder in which `" + name + "` could lie");

    /** The file of that name, as written in the build file. */
    Found find(String name);

    /** What came of looking for a file. */
    sealed interface Found {
        /** It is there. */
        record There(ByteBuffer bytes) implements Found {}

        /**
         * It cannot be read.
         *
         * @param why a clause
         */
        record Missing(String why) implements Found {}
    }
}
