package org.amberyard.study.begin;

import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.site.Site;

/** A year whose temperatures swing evenly between January and July. */
final class EvenYear {
    static final String SOURCE = "made when the study was begun of three temperatures: a year that swings evenly, 11 K between night and day; "
            + "import weather of the place instead";
    /** Between the mean low and high of a day, K; common practice, no source. */
    private static final double NIGHT_TO_DAY_K = 11;
    /** The same on the coldest day, K. */
    private static final double COLD_NIGHT_TO_DAY_K = 8;
    /** Hottest day above the mean high, K. */
    private static final double HOT_ABOVE_K = 8;
    private static final int MONTHS = 12;

    private EvenYear() {
    }

    static void write(Site site, Answers.Weather weather) {
        double julyLowC = weather.julyHighC() - NIGHT_TO_DAY_K;
        double below = weather.januaryLowC() - weather.coldestC();
        for (MonthClimate month : site.getClimate()) {
            double summer = (1 - Math.cos(2 * Math.PI * month.getMonth().ordinal() / MONTHS)) / 2;
            double lowC = weather.januaryLowC() + summer * (julyLowC - weather.januaryLowC());
            month.setMeanLowC(lowC);
            month.setMeanHighC(lowC + NIGHT_TO_DAY_K);
            month.setColdestLowC(lowC - below);
            month.setColdestHighC(lowC - below + COLD_NIGHT_TO_DAY_K);
            month.setHottestHighC(lowC + NIGHT_TO_DAY_K + HOT_ABOVE_K);
        }
    }
}
