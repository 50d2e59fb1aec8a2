package coldwright.batch;

import coldwright.science.balance.Balance;
import coldwright.science.balance.Balanced;
import coldwright.science.balance.Choice;
import coldwright.science.balance.Target;

/** The balance that a batch file asks for. */
public final class BatchBalance {
    private BatchBalance() {}

    /**
     * Finds the amounts.
     *
     * <p>The total is the file's; without one, the sum of its grams; without these, 1000 g. A row
     * whose mass is {@code fixed} stays as it is; its {@code grams} alone are only a start.
     *
     * @param batch a batch with targets
     * @return the amounts nearest to its targets
     * @throws BatchFault if it names no target, or its bounds can't add up
     */
    public static Balanced of(BatchFile batch) throws BatchFault {
        if (batch.targets().isEmpty()) {
            throw new BatchFault(
                    batch.file(),
                    0,
                    "the file names no target; write one as in: target: fat 14 %, sucrose 15 %");
        }
        double statedG = batch.rows().stream().mapToDouble(row -> row.massG().orElse(0)).sum();
        double totalG = batch.totalG().orElse(statedG > 0 ? statedG : 1000);
        try {
            Balance balance = Balance.of(totalG);
            for (Row row : batch.rows()) {
                balance = balance.using(new Choice(row.ingredient(), row.leastG(), row.mostG()));
            }
            for (Target target : batch.targets()) {
                balance = balance.aiming(target.value(), target.trait());
            }
            return balance.solve();
        } catch (IllegalArgumentException e) {
            throw new BatchFault(batch.file(), 0, e.getMessage());
        }
    }
}
