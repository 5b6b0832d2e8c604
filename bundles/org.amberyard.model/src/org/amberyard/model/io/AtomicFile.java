package org.amberyard.model.io;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/** A file that is replaced as a whole: a reader, or a machine that loses power, sees the old file or the new one. */
final class AtomicFile {
    private final Path target;
    private final boolean keepsPrevious;

    /**
     * @param file the file to replace; a symbolic link is followed
     * @param keepsPrevious whether the old file stays beside the new one with {@code ~} behind its name
     */
    AtomicFile(Path file, boolean keepsPrevious) throws StudyFileException {
        this.keepsPrevious = keepsPrevious;
        try {
            this.target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        } catch (IOException e) {
            throw failure(file, e);
        }
    }

    /** Looks at what was written before it takes its place. */
    @FunctionalInterface
    interface Check {
        void accept(Path written) throws StudyFileException;
    }

    /** The file that holds the version before the last. */
    static Path previous(Path file) {
        return file.resolveSibling(file.getFileName() + "~");
    }

    /**
     * Replaces the file.
     *
     * @throws StudyFileException when it cannot be written or the check refuses it; the old file is then as it was
     */
    void write(byte[] content, Check check) throws StudyFileException {
        if (Files.isDirectory(target)) {
            throw new StudyFileException("“" + target + "” cannot be saved because a folder has that name. Choose another.");
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new StudyFileException("“" + target.getFileName() + "” cannot be saved because it is write-protected. The file "
                    + "on disk is as it was. Save under another name, or allow the file to be written and save again.");
        }
        Path fresh = beside();
        try {
            writeThrough(fresh, content);
            check.accept(fresh);
            keepPermissions(fresh);
            keepPrevious();
            move(fresh, target);
            forceFolder();
        } catch (IOException e) {
            throw failure(target, e);
        } finally {
            remove(fresh);
        }
    }

    private static void writeThrough(Path file, byte[] content) throws IOException {
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(content);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    private void keepPermissions(Path fresh) throws IOException {
        PosixFileAttributeView now = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
        if (now != null && Files.exists(target)) {
            now.setPermissions(Files.getPosixFilePermissions(target));
        }
    }

    private void keepPrevious() throws IOException {
        if (keepsPrevious && Files.exists(target)) {
            // A copy, not a move: the file must not be missing for even a moment. On a disk that is full the copy fails, and the
            // version before must still be whole then.
            Path copy = beside();
            try {
                Files.copy(target, copy, StandardCopyOption.COPY_ATTRIBUTES);
                move(copy, previous(target));
            } finally {
                remove(copy);
            }
        }
    }

    private Path beside() {
        return target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".tmp");
    }

    private static void move(Path fresh, Path place) throws IOException {
        try {
            Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(fresh, place, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private void forceFolder() {
        try (FileChannel folder = FileChannel.open(target.getParent(), StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException e) {
            // Windows cannot open folders; there the move itself is written through in its own time.
            return;
        }
    }

    private static void remove(Path leftover) {
        try {
            Files.deleteIfExists(leftover);
        } catch (IOException e) {
            // The file that matters is in place or as it was; a leftover is no reason to report a failure.
            return;
        }
    }

    private static StudyFileException failure(Path file, IOException e) {
        Path folder = file.toAbsolutePath().getParent();
        String reason = e instanceof NoSuchFileException && !Files.isDirectory(folder)
                ? "the folder “" + folder + "” does not exist"
                : !Files.isWritable(folder) ? "the folder “" + folder + "” cannot be written to" : reason(e);
        return new StudyFileException("“" + file.getFileName() + "” cannot be saved: " + reason
                + ". The file on disk is as it was. Save under another name or in another folder.", e);
    }

    private static String reason(IOException e) {
        // Problems with a file say why apart from its name; others, such as a full disk, have the reason for their message.
        String said = e instanceof FileSystemException problem ? problem.getReason() : e.getMessage();
        String system = said == null ? e.getClass().getSimpleName() : said;
        return "the system reports “" + system + "”";
    }
}
