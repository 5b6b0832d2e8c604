package org.amberyard.workbench.fields;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.site.SitePackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.UnitChoice;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class FieldTest {
    private final Locale before = Locale.getDefault(Locale.Category.FORMAT);

    @BeforeEach
    void setLocale() {
        Locale.setDefault(Locale.Category.FORMAT, Locale.US);
    }

    @AfterEach
    void resetLocale() {
        Locale.setDefault(Locale.Category.FORMAT, before);
    }

    /** Nobody has chosen 656.17 ft; what is stored stays 200 m, and what a user has entered is read with its digits. */
    @Test
    void aDefaultIsReadAsARoundFigureInAnyUnits() {
        Study study = StudyDefaults.create();
        study.getSettings().setUnits(UnitChoice.US);
        Field elevation = new Field(SitePackage.Literals.SITE__ELEVATION_M, study);
        assertEquals(200, study.getSite().getElevationM());
        assertEquals("656", elevation.text(study.getSite()));
        assertEquals("653.54", elevation.text(199.2));
        study.getSettings().setUnits(UnitChoice.METRIC);
        assertEquals("200", new Field(SitePackage.Literals.SITE__ELEVATION_M, study).text(study.getSite()));
    }
}
