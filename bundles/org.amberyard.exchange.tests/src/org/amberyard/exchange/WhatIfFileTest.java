package org.amberyard.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.study.whatif.RunPart;
import org.amberyard.study.whatif.SavedRun;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run that is kept is read as it was written, and what is no run is refused. */
class WhatIfFileTest {
    private static final SavedRun RUN = new SavedRun("abc", Map.of(RunPart.ALL, new double[][] {{1, -2.5, Double.MIN_VALUE}, {4, 5, 6}},
            RunPart.BREAK_EVEN, new double[][] {{}, {}}), Optional.of(study()));

    @TempDir
    private Path folder;

    private static Study study() {
        Study study = StudyFactory.eINSTANCE.createStudy();
        study.setName("Ostrick Vale");
        return study;
    }

    private Path file() {
        return WhatIfFile.beside(folder.resolve("district.amberyard"));
    }

    @Test
    void itIsReadAsItWasWritten() throws IOException {
        assertEquals(Optional.empty(), WhatIfFile.read(file()));
        WhatIfFile.write(RUN, file());
        SavedRun read = WhatIfFile.read(file()).orElseThrow();
        assertEquals("abc", read.fingerprint());
        assertEquals(RUN.parts().keySet(), read.parts().keySet());
        assertArrayEquals(RUN.parts().get(RunPart.ALL)[0], read.parts().get(RunPart.ALL)[0], 0);
        assertEquals(2, read.parts().get(RunPart.BREAK_EVEN).length);
        assertTrue(EcoreUtil.equals(RUN.study().orElseThrow(), read.study().orElseThrow()));
    }

    @Test
    void theSameRunGivesTheSameBytes() throws IOException {
        WhatIfFile.write(RUN, file());
        byte[] first = Files.readAllBytes(file());
        WhatIfFile.write(RUN, file());
        assertArrayEquals(first, Files.readAllBytes(file()));
    }

    /** As files were before they held the study. */
    @Test
    void aFileWithoutAStudyIsRead() throws IOException {
        try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(Files.newOutputStream(file())))) {
            out.writeUTF("Amberyard what-if 1");
            out.writeUTF("abc");
            out.writeInt(1);
            out.writeUTF(RunPart.ALL.name());
            out.writeInt(1);
            out.writeInt(1);
            out.writeDouble(-2.5);
        }
        SavedRun read = WhatIfFile.read(file()).orElseThrow();
        assertEquals(Optional.empty(), read.study());
        assertEquals(-2.5, read.parts().get(RunPart.ALL)[0][0]);
    }

    @Test
    void aStudyThatIsNoneIsRefused() throws IOException {
        for (int length : new int[] {-1, 3, 1_000_000, Integer.MAX_VALUE}) {
            try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(Files.newOutputStream(file())))) {
                out.writeUTF("Amberyard what-if 2");
                out.writeUTF("abc");
                out.writeInt(length);
                out.writeBytes("<a>");
                out.writeInt(0);
            }
            assertThrows(IOException.class, () -> WhatIfFile.read(file()), "a study of " + length + " bytes");
        }
    }

    /** The header claims three gigabytes of numbers, of which the file holds none. */
    @Test
    void whatAFileClaimsTakesNoMemoryBeforeItIsThere() throws IOException {
        try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(Files.newOutputStream(file())))) {
            out.writeUTF("Amberyard what-if 1");
            out.writeUTF("abc");
            out.writeInt(1);
            out.writeUTF(RunPart.ALL.name());
            out.writeInt(1);
            out.writeInt(400_000_000);
        }
        assertThrows(EOFException.class, () -> WhatIfFile.read(file()));
    }

    @Test
    void whatCouldNotBeReadAgainIsNotWritten() {
        double[][] columns = new double[4001][];
        Arrays.fill(columns, new double[100_000]);
        assertThrows(IOException.class, () -> WhatIfFile.write(new SavedRun("abc", Map.of(RunPart.ALL, columns), Optional.empty()), file()));
        assertFalse(Files.exists(file()));
    }

    @Test
    void whatIsCutOffOrSomethingElseIsRefused() throws IOException {
        WhatIfFile.write(RUN, file());
        byte[] whole = Files.readAllBytes(file());
        for (int length = 0; length < whole.length; length += 7) {
            Files.write(file(), Arrays.copyOf(whole, length));
            assertThrows(IOException.class, () -> WhatIfFile.read(file()));
        }
        Files.writeString(file(), "something else");
        assertThrows(IOException.class, () -> WhatIfFile.read(file()));
        assertTrue(Files.exists(file()));
    }
}
