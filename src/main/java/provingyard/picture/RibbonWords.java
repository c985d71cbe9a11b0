package provingyard.picture;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;

/** Days and times of the ribbon in both languages. */
final class RibbonWords {

    private static final String[] DAYS = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};
    private static final String[] DIAS = {"Lun", "Mar", "Mié", "Jue", "Vie", "Sáb", "Dom"};
    private static final String[] MONTHS = {
        "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
    };
    private static final String[] MESES = {
        "ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"
    };

    private RibbonWords() {}

    /** Day n after the first day: {@code Thu 10}, or {@code 10 Oct} where months matter. */
    static String day(LocalDateTime start, long n, String language, boolean month) {
        boolean spanish = "es".equals(language);
        LocalDate d = start.toLocalDate().plusDays(n);
        if (month) {
            return d.getDayOfMonth() + " " + (spanish ? MESES : MONTHS)[d.getMonthValue() - 1];
        }
        return (spanish ? DIAS : DAYS)[d.getDayOfWeek().getValue() - 1] + " " + d.getDayOfMonth();
    }

    /** {@code 06:12}. */
    static String clock(LocalDateTime start, long tick) {
        LocalDateTime t = start.plusMinutes(tick);
        return String.format(Locale.ROOT, "%02d:%02d", t.getHour(), t.getMinute());
    }
}
