package coldwright.published;

import org.junit.jupiter.params.provider.ArgumentsSource;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Runs a parameterised test on each row of a published table, doubtful rows left out. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ArgumentsSource(TableRows.class)
public @interface FromTable {
    /** The table's name. */
    String value();
}
