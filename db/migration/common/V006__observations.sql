-- One trait value on one unit: a value, or a reason why there is none.

create table observation (
  id               uuid primary key,
  unit_id          uuid not null references unit,
  trait_id         uuid not null references trait,
  on_date          date not null,
  number_value     numeric(16, 6),
  date_value       date,
  text_value       varchar(200),
  none_because     varchar(20)
                   check (none_because in ('NOT_LOOKED_AT', 'DEAD', 'MISSING_PLANT', 'NOT_YET_FLOWERING', 'VOID')),
  note             varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references observation,
  supersede_reason varchar(300),
  check ((case when number_value is null then 0 else 1 end)
       + (case when date_value is null then 0 else 1 end)
       + (case when text_value is null then 0 else 1 end)
       + (case when none_because is null then 0 else 1 end) = 1)
);

create index observation_unit on observation (unit_id, trait_id, on_date);
create index observation_trait on observation (trait_id, on_date);
