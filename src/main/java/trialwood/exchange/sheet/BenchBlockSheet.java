package trialwood.exchange.sheet;

import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.BenchBlock;
import trialwood.propagation.BenchBlocks;

/** The bench on which each block of a run stands. */
@Component
class BenchBlockSheet extends Sheet {

  private static final Column<String> RUN = Column.code("run", Known.RUN, "its run").key();
  private static final Column<String> BLOCK =
      Column.text("block", 10, "the block, as the trays name it").key();
  private static final Column<String> BENCH =
      Column.code("bench", Known.BENCH, "the bench it stands on").required();

  private final BenchBlocks blocks;

  BenchBlockSheet(BenchBlocks blocks) {
    super(38, "bench-blocks", RUN, BLOCK, BENCH);
    this.blocks = blocks;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> blocks.save(new BenchBlock(row.id(RUN), row.the(BLOCK), row.id(BENCH))));
  }

  @Override
  protected String query() {
    return """
        select r.code, k.block, b.code
        from bench_block k
          join sticking_run r on r.id = k.run_id
          join bench b on b.id = k.bench_id
        order by k.id
        """;
  }
}
