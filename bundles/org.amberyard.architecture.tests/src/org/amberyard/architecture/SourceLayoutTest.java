package org.amberyard.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** All sources have one layout; {@code sh releng/format} gives it to them. */
class SourceLayoutTest {

    @Test
    void allSourcesAreLaidOutAlike() throws IOException {
        SourceLayout layout = new SourceLayout();
        List<String> others = new ArrayList<>();
        for (SourceFile file : Sources.ofEverything()) {
            if (!layout.of(file.text()).equals(file.text())) {
                others.add(file.bundle() + "/" + file.name());
            }
        }
        assertEquals(List.of(), others, "sh releng/format lays them out");
    }

    @Test
    void whatIsLaidOutOtherwiseIsTold() throws IOException {
        assertEquals("class A {\n    int b = 1;\n\n    void c() {\n        b++;\n    }\n}\n",
                new SourceLayout().of("class A {\n  int b=1;\n\n\n  void c()\n  { b++; }\n}\n"));
    }
}
