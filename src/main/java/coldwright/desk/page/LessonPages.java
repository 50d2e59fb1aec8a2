package coldwright.desk.page;

import coldwright.desk.lesson.LessonColumns;
import coldwright.desk.lesson.LessonView;
import coldwright.desk.lesson.model.LessonModel;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The pages of the lessons shown last, because each takes some tens of megabytes. */
final class LessonPages {
    private static final int MOST = 3;

    private final Map<LessonModel, LessonColumns> pages = new LinkedHashMap<>();

    /** Where the pages of the former view were, which had another language. */
    private final Map<LessonModel, LessonView.Place> places = new HashMap<>();

    /** Takes over where the pages of another view are. */
    void follow(LessonPages former) {
        places.putAll(former.places);
        former.pages.forEach((lesson, page) -> places.put(lesson, page.lesson().place()));
    }

    /** Where the page of a lesson was, asked once, when the page is made. */
    Optional<LessonView.Place> formerPlace(LessonModel lesson) {
        return Optional.ofNullable(places.remove(lesson));
    }

    /** The page of a lesson, if it is kept; it counts as shown last. */
    Optional<LessonColumns> of(LessonModel lesson) {
        LessonColumns page = pages.remove(lesson);
        if (page != null) {
            pages.put(lesson, page);
        }
        return Optional.ofNullable(page);
    }

    /** Keeps the page of a lesson, and drops the one that was shown longest ago. */
    LessonColumns keep(LessonModel lesson, LessonColumns page) {
        pages.put(lesson, page);
        if (pages.size() > MOST) {
            pages.remove(pages.keySet().iterator().next());
        }
        return page;
    }

    /** Drops the pages of other lessons. */
    void retain(Collection<LessonModel> lessons) {
        pages.keySet().retainAll(lessons);
        places.keySet().retainAll(lessons);
    }
}
