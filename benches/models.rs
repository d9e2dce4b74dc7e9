//! Times of the models: `cargo bench -p bench --bench models`.

use criterion::{Criterion, Throughput, criterion_group, criterion_main};

fn models(criterion: &mut Criterion) {
    for work in bench::works() {
        let mut group = criterion.benchmark_group(work.name);
        group.throughput(Throughput::Elements(work.count.into()));
        group.bench_function("run", |bencher| bencher.iter(work.run));
        group.finish();
    }
}

criterion_group!(benches, models);
criterion_main!(benches);
