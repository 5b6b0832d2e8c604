package org.amberyard.workbench.session;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.core.runtime.ILog;

/**
 * Tells other running programs that a study file is being edited. The lock stands on a hidden file beside the study, never on
 * the study itself, which is replaced whole at every save; it ends with the process, however that ends.
 */
public final class StudyLock implements AutoCloseable {

    private static final String ENDING = ".lock";
    /**
     * Files of locks that this very program has, by their real names. On many systems a process that closes a file loses all locks that
     * it has on it, so a file that is locked here must not be opened a second time to ask.
     */
    private static final Set<Path> OWN = ConcurrentHashMap.newKeySet();

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
        try {
            Path real = of(study.toAbsolutePath().getParent().toRealPath().resolve(study.getFileName()));
            boolean own = OWN.stream().anyMatch(other -> isSame(other, real));
            return !own && OWN.add(real) ? locked(real) : new StudyLock(real, null, true);
        } catch (IOException e) {
            // A folder that is not there holds nothing that could be taken.
            return new StudyLock(of(study), null, false);
        }
    }

    /** True for two names of one file, be they spelt otherwise or links; told without opening it. */
    private static boolean isSame(Path own, Path asked) {
        try {
            return Files.isSameFile(own, asked);
        } catch (IOException e) {
            // A lock that is not there yet is no other's.
            return false;
        }
    }

    private static StudyLock locked(Path file) {
        FileChannel channel = null;
        try {
            channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (channel.tryLock() != null) {
                return new StudyLock(file, channel, false);
            }
        } catch (OverlappingFileLockException e) {
            // This program took it by another name in this moment; to close the channel would free that lock.
            OWN.remove(file);
            return new StudyLock(file, null, true);
        } catch (IOException e) {
            // A folder that is only read, or a drive that knows no locks, must not keep anyone from opening the study.
            giveUp(file, channel);
            return new StudyLock(file, null, false);
        }
        giveUp(file, channel);
        return new StudyLock(file, null, true);
    }

    private static void giveUp(Path file, FileChannel channel) {
        closeQuietly(channel);
        OWN.remove(file);
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
            giveUp(file, channel);
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
