package org.amberyard.report;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Files of a folder that are written under temporary names and moved into place together. */
public final class StagedFiles implements AutoCloseable {
    private final Path folder;
    private final Map<Path, Path> targets = new LinkedHashMap<>();

    /** Files of a folder that is there. */
    public StagedFiles(Path folder) {
        this.folder = folder;
    }

    /** Temporary file that will get a name. */
    public Path add(String name) throws IOException {
        Path temporary = Files.createFile(folder.resolve("." + name + "." + Long.toHexString(System.nanoTime()) + ".tmp"));
        targets.put(temporary, folder.resolve(name));
        return temporary;
    }

    /** Moves all files to their names. */
    public List<Path> moveIntoPlace() throws IOException {
        List<Path> moved = new ArrayList<>();
        for (Map.Entry<Path, Path> entry : List.copyOf(targets.entrySet())) {
            move(entry.getKey(), entry.getValue());
            targets.remove(entry.getKey());
            moved.add(entry.getValue());
        }
        return moved;
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Removes what has not been moved. */
    @Override
    public void close() throws IOException {
        for (Path temporary : targets.keySet()) {
            Files.deleteIfExists(temporary);
        }
    }
}
