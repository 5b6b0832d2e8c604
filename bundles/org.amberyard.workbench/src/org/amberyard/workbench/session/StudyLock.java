package org.amberyard.workbench.session;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.eclipse.core.runtime.ILog;

/**
 * Tells other running programs that a study file is being edited. The lock stands on a hidden file beside the study, never on
 * the study itself, which is replaced whole at every save; it ends with the process, however that ends.
 */
public final class StudyLock implements AutoCloseable {

    private static final String ENDING = ".lock";

    private final Path file;
    private final FileChannel channel;
    private final boolean taken;

    private StudyLock(Path file, FileChannel channel, boolean taken) {
        this.file = file;
        this.channel = channel;
        this.taken = taken;
    }

    /** Where the lock of a study file stands. */
    public static Path of(Path study) {
        return study.resolveSibling("." + study.getFileName() + ENDING);
    }

    /** True while another session or program edits a study file. */
    public static boolean isTaken(Path study) {
        try (StudyLock lock = take(study)) {
            return lock.taken;
        }
    }

    /** Takes the lock of a study file. Where another has it, or the folder allows none, the study can be edited without. */
    static StudyLock take(Path study) {
        if (study == null) {
            return new StudyLock(null, null, false);
        }
        Path file = of(study);
        FileChannel channel = null;
        try {
            channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return new StudyLock(file, channel, false);
            }
        } catch (OverlappingFileLockException e) {
            // Another session of this very program has it.
            closeQuietly(channel);
            return new StudyLock(file, null, true);
        } catch (IOException e) {
            // A folder that is only read, or a drive that knows no locks, must not keep anyone from opening the study.
            closeQuietly(channel);
            return new StudyLock(file, null, false);
        }
        closeQuietly(channel);
        return new StudyLock(file, null, true);
    }

    /** True where another session or program had the study file when this one asked for it. */
    boolean isOthers() {
        return taken;
    }

    @Override
    public void close() {
        if (channel != null && channel.isOpen()) {
            try {
                Files.deleteIfExists(file);
            } catch (IOException e) {
                ILog.of(StudyLock.class).warn(e.getMessage(), e);
            }
            closeQuietly(channel);
        }
    }

    private static void closeQuietly(FileChannel channel) {
        try {
            if (channel != null) {
                channel.close();
            }
        } catch (IOException e) {
            ILog.of(StudyLock.class).warn(e.getMessage(), e);
        }
    }
}
