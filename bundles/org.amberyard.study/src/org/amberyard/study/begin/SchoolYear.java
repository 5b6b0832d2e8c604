package org.amberyard.study.begin;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.site.SiteFactory;
import org.eclipse.emf.ecore.EAttribute;

/** School days spread over the months of a year. */
final class SchoolYear {
    static final String SOURCE = "number entered when the study was begun; spread over the months as school years usually are, no source";
    /** Days of the months of a usual school year, January first. */
    private static final int[] USUAL = {19, 18, 21, 19, 20, 8, 0, 6, 21, 21, 17, 14};

    private SchoolYear() {
    }

    /** A calendar of so many days: each month gets its part, the months with the largest remainders one more. */
    static ServiceCalendar of(int days) {
        double perUsual = (double) days / IntStream.of(USUAL).sum();
        int[] whole = IntStream.of(USUAL).map(u -> (int) Math.floor(u * perUsual)).toArray();
        List<Integer> byRemainder = IntStream.range(0, USUAL.length).boxed()
                .sorted((a, b) -> Double.compare(remainder(b, perUsual), remainder(a, perUsual))).toList();
        int missing = days - IntStream.of(whole).sum();
        byRemainder.subList(0, missing).forEach(month -> whole[month]++);
        ServiceCalendar calendar = SiteFactory.eINSTANCE.createServiceCalendar();
        calendar.setName("School days");
        List<EAttribute> months = calendar.eClass().getEAttributes().stream().filter(f -> f.getEType().getInstanceClass() == int.class).toList();
        for (int month = 0; month < whole.length; month++) {
            calendar.eSet(months.get(month), whole[month]);
        }
        return calendar;
    }

    private static double remainder(int month, double perUsual) {
        double part = USUAL[month] * perUsual;
        return part - Math.floor(part);
    }
}
