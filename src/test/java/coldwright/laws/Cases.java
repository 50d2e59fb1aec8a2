package coldwright.laws;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A law: one test that runs a number of cases, each with a {@link Draw} of its own.
 *
 * <p>A build always runs the same cases. A failure names the seed of its case: {@code -Dlaws.seed=}
 * with that seed makes it the first case. {@code -Dlaws.cases=20} runs twenty times as many.
 */
@Test
@ExtendWith(CaseRunner.class)
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
public @interface Cases {
    /** How many cases an ordinary build runs. */
    int value();
}
