package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The folder that a verb writes into.
 *
 * @param path the folder, new or existing
 */
record OutFolder(Path path) {
    static final String OPTION = "--out";

    /** Something that writes files. */
    interface Writing<T> {
        T into(Path folder) throws IOException;
    }

    /** The folder that the command line names. */
    static OutFolder of(Arguments arguments, Console console) throws WrongUse {
        Path folder = arguments.path(OPTION, console.folder());
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new WrongUse(OPTION + " is " + folder + ", which is a file; give a folder, new or existing.");
        }
        return new OutFolder(folder);
    }

    /** Writes; a folder that cannot be written into is a wrong use, not a fault. */
    <T> T write(Writing<T> writing) throws WrongUse, IOException {
        try {
            return writing.into(path);
        } catch (FileSystemException e) {
            throw new WrongUse(OPTION + " is " + path + ", where " + e.getFile() + " cannot be written"
                    + (e.getReason() == null ? "" : " (" + e.getReason() + ")") + "; choose another folder.");
        }
    }
}
