package org.amberyard.workbench.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;

/** Time and size of a file, by which a change that another program has made to it is noticed. */
record FileStamp(FileTime time, long size) {

    /** No file. */
    private static final FileStamp NONE = new FileStamp(FileTime.fromMillis(0), -1);

    static FileStamp of(Path file) {
        try {
            return file == null ? NONE : new FileStamp(Files.getLastModifiedTime(file), Files.size(file));
        } catch (IOException e) {
            return NONE;
        }
    }
}
